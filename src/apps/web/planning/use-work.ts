import { useCallback, useEffect, useRef, useState } from 'react'
import type { Lane } from '#outside/workers/lane.ts'
import { keptAnswers } from './kept-answers.ts'
import { type Missing, type Piece, workPieces } from './work-pieces.ts'

/** Answers of many pieces as far as they are there. */
export interface Work<State> {
  readonly states: Readonly<Record<string, State | Missing>>
  /** Pieces of which the answer, or why there is none, is there, and how many there are. */
  readonly done: number
  readonly of: number
  readonly isRunning: boolean
  /** Leaves the rest; what is there stays. */
  readonly stop: () => void
  /** Goes on with what was left. */
  readonly goOn: () => void
}

/** What is asked; pieces of one key are always the same. */
export interface AskedWork<Question> {
  readonly key: string
  readonly pieces: readonly Piece<Question>[]
  /**
   * The address of the worker whose answers outlive the page, and whether what was kept is an answer still: a browser's
   * storage may be damaged. Absent = they go with the page.
   */
  readonly kept?: { readonly of: string; readonly isState: (found: unknown, name: string) => boolean }
}

/** Answers that were worked out since the page was opened, by key: who comes back does not wait for them again. */
const known = new Map<string, Readonly<Record<string, unknown>>>()

/**
 * Works on every piece in workers, `null` = there is nothing to do. `spawn` and `stateOf`, which says what is kept of an
 * answer, must be the same functions every time.
 */
export function useWork<Question, Answer, State>(
  asked: AskedWork<Question> | null,
  spawn: () => Lane<Question, Answer>,
  stateOf: (answer: Answer) => State | Missing,
): Work<State> {
  type States = Readonly<Record<string, State | Missing>>
  const key = asked?.key ?? ''
  const [shown, setShown] = useState<{ key: string; states: States }>({ key: '', states: {} })
  const [running, setRunning] = useState('')
  const [turn, setTurn] = useState(0)
  const stopping = useRef<AbortController | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `turn` goes on with what was left; the key says what is asked.
  useEffect(() => {
    if (asked === null) return
    const states = (known.get(key) ?? {}) as States
    setShown({ key, states })
    const left = asked.pieces.filter(({ name }) => states[name] === undefined)
    if (left.length === 0) return
    const controller = new AbortController()
    stopping.current = controller
    const { signal } = controller
    const kept = asked.kept === undefined ? null : keptAnswers(asked.kept.of, key)
    const add = (found: Readonly<Record<string, unknown>>): void => {
      const now = { ...known.get(key), ...found } as States
      known.set(key, now)
      if (!signal.aborted) setShown({ key, states: now })
    }
    const work = async (): Promise<void> => {
      const stored = kept === null ? {} : await kept.find()
      const isWhole = ({ name }: Piece<Question>): boolean => asked.kept?.isState(stored[name], name) === true
      const found = Object.fromEntries(left.filter(isWhole).map(({ name }) => [name, stored[name]]))
      if (Object.keys(found).length > 0) add(found)
      if (signal.aborted) return
      const unknown = left.filter(({ name }) => found[name] === undefined)
      await workPieces(unknown, spawn, signal, (name, answer) => {
        const state = isMissing(answer) ? answer : stateOf(answer)
        add({ [name]: state })
        if (!isMissing(state)) void kept?.keep(name, state)
      })
    }
    setRunning(key)
    work().finally(() => setRunning((now) => (now === key && stopping.current === controller ? '' : now)))
    return () => controller.abort()
  }, [key, turn])
  const states = shown.key === key ? shown.states : NONE
  return {
    states,
    done: Object.keys(states).length,
    of: asked?.pieces.length ?? 0,
    isRunning: key !== '' && running === key,
    stop: useCallback(() => stopping.current?.abort(), []),
    goOn: useCallback(() => setTurn((before) => before + 1), []),
  }
}

const NONE: Readonly<Record<string, never>> = {}

function isMissing(answer: unknown): answer is Missing {
  return typeof answer === 'object' && answer !== null && 'missing' in answer
}
