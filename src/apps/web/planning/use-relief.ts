import { useMemo } from 'react'
import type { Relief } from '#golf/strategy/relief.ts'
import type { Answered, ReliefQuestion } from './questions.ts'
import type { Situation } from './use-planning.ts'
import { useQuickThenFull, type Worked } from './use-quick-then-full.ts'

/** What the Rules give the ball of a situation; `null` = nothing is asked. */
export function useRelief(situation: Situation | null): Worked<Relief> {
  const question = useMemo((): ReliefQuestion | null => {
    if (situation === null || situation.ball === null) return null
    const { courseName, hole, player, day, ball } = situation
    return { kind: 'relief', courseName, hole, player, day, ball, isFirst: true }
  }, [situation])
  return useQuickThenFull(question, reliefOf)
}

function reliefOf({ relief }: Answered): Relief | undefined {
  return relief
}
