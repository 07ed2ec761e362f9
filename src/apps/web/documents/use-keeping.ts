import { useEffect, useRef, useState } from 'react'
import type { Trouble } from '../planning/questions.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { troubleOf } from './use-library.ts'

/**
 * Keeps what is written a moment after it rests, one keeping after another, and what rests still when the page is left.
 * `found`: what was kept when the page opened; `keep` must be the same function as long as it keeps the same document.
 */
export function useKeeping<Value>(
  found: Value,
  now: Value,
  keep: (before: Value, now: Value) => Promise<void>,
): {
  readonly state: 'kept' | 'keeping'
  /** Why it could not be kept; it is tried again with the next change. */
  readonly trouble: Trouble | null
} {
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [kept, setKept] = useState(found)
  const chain = useRef(Promise.resolve())
  const inStore = useRef(found)
  useEffect(() => {
    if (now === inStore.current) return
    const keepNow = (): void => {
      chain.current = chain.current.then(async () => {
        if (now === inStore.current) return
        try {
          await keep(inStore.current, now)
          inStore.current = now
          setKept(now)
          setTrouble(null)
        } catch (error) {
          setTrouble(troubleOf(error))
        }
      })
    }
    const later = setTimeout(keepNow, DESK_SETTINGS.keepStepsMilliseconds)
    addEventListener('pagehide', keepNow)
    return () => {
      clearTimeout(later)
      removeEventListener('pagehide', keepNow)
    }
  }, [now, keep])
  // A page that is left while a change rests has it kept all the same.
  const last = useRef(now)
  last.current = now
  useEffect(
    () => () => {
      if (last.current !== inStore.current)
        chain.current.then(() => keep(inStore.current, last.current)).catch(() => {})
    },
    [keep],
  )
  return { state: kept === now ? 'kept' : 'keeping', trouble }
}
