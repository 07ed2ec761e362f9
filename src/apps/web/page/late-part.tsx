import { type ComponentType, type ReactElement, useEffect, useState } from 'react'
import { listServed } from '../documents/server-documents.ts'
import { TroubleNote } from './trouble-note.tsx'
import { WaitingFor } from './waiting-for.tsx'

/** Fetches a part of the page. */
export type LoadPart<Props> = () => Promise<ComponentType<Props>>

/** Parts that are here, by what fetched them: shown again they are there at once. */
const known = new Map<unknown, unknown>()

/**
 * A part of the page that comes when it is first shown; `what` says what is waited for, `load` must be the same function
 * every time. Where the server does not answer the rest of the page stays, and the part can be asked for again.
 */
export function LatePart<Props extends object>(props: {
  readonly what: string
  readonly load: LoadPart<Props>
  readonly show: Props
}): ReactElement {
  const { what, load } = props
  const [, setTimes] = useState(0)
  const [isMissing, setMissing] = useState(false)
  const Part = known.get(load) as ComponentType<Props> | undefined
  const isHere = Part !== undefined
  useEffect(() => {
    if (isHere || isMissing) return
    let isWanted = true
    load()
      .then((part) => {
        known.set(load, part)
        if (isWanted) setTimes((times) => times + 1)
      })
      .catch(() => isWanted && setMissing(true))
    return () => {
      isWanted = false
    }
  }, [load, isHere, isMissing])
  if (Part !== undefined) return <Part {...props.show} />
  if (!isMissing) return <WaitingFor what={what} />
  const message = `The server does not answer, so ${what} cannot be shown yet. Nothing is lost.`
  return (
    <div>
      <TroubleNote trouble={{ code: 'MAR-WEB-001', message, where: '' }} />
      <button type="button" onClick={loadAgain}>
        Try again
      </button>
    </div>
  )
}

/** A browser remembers that a part could not be fetched for as long as the page is open: once the server answers, the page is loaded again. */
function loadAgain(): void {
  listServed('days').then(
    () => location.reload(),
    () => {},
  )
}
