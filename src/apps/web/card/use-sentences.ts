import { useCallback, useState } from 'react'
import { isSamePlace, type OwnSentence } from '#golf/player/own-sentence.ts'
import { beginHistory, type History, redo, remember, undo } from '../desk/history.ts'
import { useKeeping } from '../documents/use-keeping.ts'
import type { Trouble } from '../planning/questions.ts'
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
  const { now } = history
  const keep = useCallback(
    (before: readonly OwnSentence[], next: readonly OwnSentence[]) => keepSentences(playerId, before, next),
    [playerId],
  )
  const keeping = useKeeping(found, now, keep)
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
    ...keeping,
  }
}
