import type { PlanQuestion } from './questions.ts'

/** A plan for the fewest strokes, the best club and no flips: what a card and a round ask for. */
export function plainPlan(
  asked: Pick<PlanQuestion, 'courseName' | 'hole' | 'player' | 'day' | 'units'>,
  ball: PlanQuestion['ball'] = null,
): PlanQuestion {
  return {
    kind: 'plan',
    ...asked,
    ball,
    club: null,
    format: null,
    isFirst: false,
    near: null,
    hasFlips: false,
  }
}
