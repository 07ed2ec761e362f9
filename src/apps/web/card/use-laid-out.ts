import { useEffect, useState } from 'react'
import type { Trouble } from '../planning/questions.ts'
import { type Asked, type LaidOut, layOut } from './lay-out.ts'

/** The pages of what is asked, as soon as they are laid out; those of before stay until then. `asked` must be kept by the caller. */
export function useLaidOut(asked: Asked): {
  readonly laid: LaidOut | null
  readonly trouble: Trouble | null
} {
  const [state, setState] = useState<{ laid: LaidOut | null; trouble: Trouble | null }>({
    laid: null,
    trouble: null,
  })
  useEffect(() => {
    let isWanted = true
    layOut(asked)
      .then((laid) => isWanted && setState({ laid, trouble: null }))
      .catch((error: unknown) => {
        if (isWanted) setState((before) => ({ ...before, trouble: troubleOfPress(error) }))
      })
    return () => {
      isWanted = false
    }
  }, [asked])
  return state
}

/** What prints comes from the server once: without it the page cannot be laid out for the first time. */
export function troubleOfPress(error: unknown): Trouble {
  const said = error instanceof Error ? error.message : String(error)
  const message = `The letters of the page cannot be fetched, so it is not laid out yet. Nothing is lost. ${said}`
  return { code: 'MAR-WEB-001', message, where: '' }
}
