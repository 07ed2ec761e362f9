import { useState } from 'react'

/** Which hole's sentences are being written, and which writing that is: all that one does is one step of undo. */
export interface Writing {
  readonly ref: string | null
  readonly number: number
  readonly begin: (ref: string) => void
  readonly end: () => void
}

export function useWriting(): Writing {
  const [state, setState] = useState<{ ref: string | null; number: number }>({ ref: null, number: 0 })
  return {
    ...state,
    begin: (ref) => setState(({ number }) => ({ ref, number: number + 1 })),
    end: () => setState((before) => ({ ...before, ref: null })),
  }
}
