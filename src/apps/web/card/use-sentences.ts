import { useCallback, useEffect, useRef, useState } from 'react'
import { isSamePlace, type OwnSentence } from '#golf/player/own-sentence.ts'
import { beginHistory, type History, redo, remember, undo } from '../desk/history.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { keepSentences } from './kept-sentences.ts'

/** The sentences written for a player, with their past, kept in the store as they are written. */
export interface Sentences {
  readonly written: readonly OwnSentence[]
  /** Puts a sentence in its place; all that one writing does is one step. */
  readonly write: (sentence: OwnSentence, writing: number) => void
  /** Takes a sentence away: what the plan proposes stands there again. */
  readonly drop: (sentence: OwnSentence, writing?: number) => void
  readonly undo: () => void
  readonly redo: () => void
  readonly canUndo: boolean
  readonly canRedo: boolean
  readonly state: 'kept' | 'keeping'
  /** Why they could not be kept; they are tried again with the next change. */
  readonly trouble: Trouble | null
}

export function useSentences(playerId: string, found: readonly OwnSentence[]): Sentences {
  const [history, setHistory] = useState<History<readonly OwnSentence[]>>(() => beginHistory(found))
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [kept, setKept] = useState(found)
  const chain = useRef(Promise.resolve())
  const inStore = useRef(found)
  const { now } = history
  useEffect(() => {
    if (now === inStore.current) return
    const keep = (): void => {
      chain.current = chain.current.then(async () => {
        if (now === inStore.current) return
        try {
          await keepSentences(playerId, inStore.current, now)
          inStore.current = now
          setKept(now)
          setTrouble(null)
        } catch (error) {
          setTrouble(troubleOf(error))
        }
      })
    }
    const later = setTimeout(keep, DESK_SETTINGS.keepStepsMilliseconds)
    addEventListener('pagehide', keep)
    return () => {
      clearTimeout(later)
      removeEventListener('pagehide', keep)
    }
  }, [now, playerId])
  // A page that is left while a sentence rests has it kept all the same.
  const last = useRef(now)
  last.current = now
  useEffect(
    () => () => {
      if (last.current !== inStore.current)
        chain.current.then(() => keepSentences(playerId, inStore.current, last.current)).catch(() => {})
    },
    [playerId],
  )
  const change = useCallback(
    (place: OwnSentence, next: readonly OwnSentence[], writing: number | null): void =>
      setHistory((before) =>
        remember(before, [...before.now.filter((other) => !isSamePlace(other, place)), ...next], {
          kind: `${place.hole} ${place.part}`,
          at: Date.now(),
          drag: writing,
        }),
      ),
    [],
  )
  return {
    written: now,
    write: useCallback((sentence, writing) => change(sentence, [sentence], writing), [change]),
    drop: useCallback((sentence, writing) => change(sentence, [], writing ?? null), [change]),
    undo: useCallback(() => setHistory(undo), []),
    redo: useCallback(() => setHistory(redo), []),
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    state: kept === now ? 'kept' : 'keeping',
    trouble,
  }
}
