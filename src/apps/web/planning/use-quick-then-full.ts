import { useEffect, useRef, useState } from 'react'
import { type LatestAnswer, latestAnswer } from './latest-answer.ts'
import { planner } from './planner.ts'
import type { Answered, ReliefQuestion, ThumbQuestion, Trouble } from './questions.ts'

/** An answer as far as it is known. */
export interface Worked<Answer> {
  /** The last one, possibly of the question before: `isCurrent` tells. */
  readonly answer: Answer | null
  readonly isCurrent: boolean
  /** True once the fuller answer is there. */
  readonly isFull: boolean
  readonly trouble: Trouble | null
}

const NOTHING = { answer: null, isCurrent: false, isFull: false, trouble: null } as const

/**
 * Asks a question of a worker of its own: a quick first answer, then the fuller one; stale answers are dropped. The
 * question must be kept by the caller and be its first; `null` = nothing is asked. `answerOf` must be the same function
 * every time.
 */
export function useQuickThenFull<Answer>(
  question: ReliefQuestion | ThumbQuestion | null,
  answerOf: (answered: Answered) => Answer | undefined,
): Worked<Answer> {
  const [worked, setWorked] = useState<Worked<Answer>>(NOTHING)
  const worker = useRef<LatestAnswer | null>(null)
  const asked = useRef<ReliefQuestion | ThumbQuestion | null>(null)

  useEffect(() => {
    const latest = latestAnswer(
      planner(),
      (answered) => {
        const answer = answerOf(answered)
        if (answer === undefined || asked.current === null) {
          setWorked({ ...NOTHING, trouble: answered.fault ?? null })
          return
        }
        const { isFirst } = asked.current
        setWorked({ answer, isCurrent: true, isFull: !isFirst, trouble: null })
        if (!isFirst) return
        asked.current = { ...asked.current, isFirst: false }
        latest.ask(asked.current)
      },
      true,
    )
    worker.current = latest
    return () => latest.stop()
  }, [answerOf])

  useEffect(() => {
    asked.current = question
    if (question === null) {
      worker.current?.forget()
      setWorked(NOTHING)
      return
    }
    setWorked((before) => ({ ...before, isCurrent: false, isFull: false, trouble: null }))
    worker.current?.ask(question)
  }, [question])
  return worked
}
