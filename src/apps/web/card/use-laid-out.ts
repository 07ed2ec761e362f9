import { useEffect, useState } from 'react'
import type { Trouble } from '../planning/questions.ts'

/**
 * The pages of what is asked, `null` = nothing is, as soon as they are laid out; those of before stay until then. `asked` must be
 * kept by the caller, and `layOut` be the same function every time.
 */
export function useLaidOut<Asked, LaidOut>(
  asked: Asked | null,
  layOut: (asked: Asked) => Promise<LaidOut>,
): {
  readonly laid: LaidOut | null
  readonly trouble: Trouble | null
} {
  const [state, setState] = useState<{ laid: LaidOut | null; trouble: Trouble | null }>(NONE)
  useEffect(() => {
    if (asked === null) {
      setState(NONE)
      return
    }
    let isWanted = true
    layOut(asked)
      .then((laid) => isWanted && setState({ laid, trouble: null }))
      .catch((error: unknown) => {
        if (isWanted) setState((before) => ({ ...before, trouble: troubleOfPress(error) }))
      })
    return () => {
      isWanted = false
    }
  }, [asked, layOut])
  return state
}

const NONE = { laid: null, trouble: null }

/** What prints comes from the server once: without it the page cannot be laid out for the first time. */
function troubleOfPress(error: unknown): Trouble {
  const said = error instanceof Error ? error.message : String(error)
  const message = `The letters of the page cannot be fetched, so it is not laid out yet. Nothing is lost. ${said}`
  return { code: 'MAR-WEB-001', message, where: '' }
}
