import { useEffect, useRef, useState } from 'react'
import type { Relief } from '#golf/strategy/relief.ts'
import { type LatestAnswer, latestAnswer } from './latest-answer.ts'
import { planner } from './planner.ts'
import type { ReliefQuestion, Trouble } from './questions.ts'
import type { Situation } from './use-planning.ts'

/** What the Rules give the ball, as far as it is known. */
export interface ReliefAnswer {
  /** The last answer, possibly of the place before: `isCurrent` tells. */
  readonly relief: Relief | null
  readonly isCurrent: boolean
  /** True once the fuller answer is there. */
  readonly isFull: boolean
  readonly trouble: Trouble | null
}

const NOTHING: ReliefAnswer = { relief: null, isCurrent: false, isFull: false, trouble: null }

/**
 * Works out the relief of the situation's ball: a quick first answer, then the fuller one; stale answers are dropped.
 * `null` = none is asked for.
 */
export function useRelief(situation: Situation | null): ReliefAnswer {
  const [answer, setAnswer] = useState<ReliefAnswer>(NOTHING)
  const worker = useRef<LatestAnswer | null>(null)
  const asked = useRef<ReliefQuestion | null>(null)

  useEffect(() => {
    const latest = latestAnswer(
      planner(),
      ({ relief, fault }) => {
        const question = asked.current
        if (relief === undefined || question === null) {
          setAnswer({ ...NOTHING, trouble: fault ?? null })
          return
        }
        setAnswer({ relief, isCurrent: true, isFull: !question.isFirst, trouble: null })
        if (!question.isFirst) return
        asked.current = { ...question, isFirst: false }
        latest.ask(asked.current)
      },
      true,
    )
    worker.current = latest
    return () => latest.stop()
  }, [])

  useEffect(() => {
    if (situation === null || situation.ball === null) {
      worker.current?.forget()
      asked.current = null
      setAnswer(NOTHING)
      return
    }
    const { courseName, hole, player, day, ball } = situation
    asked.current = { kind: 'relief', courseName, hole, player, day, ball, isFirst: true }
    setAnswer((before) => ({ ...before, isCurrent: false, isFull: false, trouble: null }))
    worker.current?.ask(asked.current)
  }, [situation])
  return answer
}
