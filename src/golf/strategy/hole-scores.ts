import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { evaluateStroke } from './evaluate-stroke.ts'
import { holeGround, holeModel, type LayGround } from './hole-model.ts'
import { scoreChances, scoresOfStroke } from './score-distribution.ts'
import { COMPARE_LINE_STEP_DEGREES, COMPARE_QUADRATURE, MOST_STROKES } from './settings.ts'
import { solveHole } from './solve-hole.ts'
import { strokeTries } from './stroke-tries.ts'

/** How coarsely a hole is laid out; as in a plan when absent. */
export interface HoleScoresOptions {
  readonly layGround?: LayGround
  readonly cellMetres?: number
  readonly quadrature?: { readonly good: number; readonly mishit: number }
}

/**
 * Chance of each score of a player on a hole from the markers, by the plan for fewest strokes: `scores[k]` that of `k`
 * strokes, the last that of whatever is longer. They add up to 1. The hole must have a green.
 */
export function holeScores(hole: Hole, player: Player, day: Day, options: HoleScoresOptions = {}): number[] {
  const model = holeModel((options.layGround ?? holeGround)(hole, options.cellMetres), player, day)
  const { problem, values } = solveHole(model, options.quadrature)
  const situation = { x: 0, y: 0, lie: 'tee' } as const
  const { value, candidates } = evaluateStroke(model, values, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, problem.shots, situation, COMPARE_LINE_STEP_DEGREES),
  })
  const [first, ...others] = candidates
  if (!first) return [...new Array<number>(MOST_STROKES).fill(0), 1]
  const best = others.reduce((least, one) => (one.strokes < least.strokes ? one : least), first)
  return scoresOfStroke(model, best.ends, scoreChances(model, problem, values), values, value, null)
}
