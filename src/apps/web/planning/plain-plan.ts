import type { PlanQuestion } from './questions.ts'

/** A plan for the fewest strokes, the best club and no flips: what a card and a round ask for; `isQuick` by quick settings. */
export function plainPlan(
  asked: Pick<PlanQuestion, 'courseName' | 'hole' | 'player' | 'day' | 'units'>,
  ball: PlanQuestion['ball'] = null,
  isQuick: boolean = false,
): PlanQuestion {
  return {
    kind: 'plan',
    ...asked,
    ball,
    club: null,
    format: null,
    isFirst: isQuick,
    near: null,
    hasFlips: false,
  }
}
