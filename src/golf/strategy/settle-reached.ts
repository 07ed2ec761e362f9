import { type ShortestPathSolution, solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { TriedStroke } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import type { HoleProblem } from './hole-problem.ts'
import { reachedStates } from './reached-states.ts'
import { NEIGHBOUR_TOLERANCE } from './settings.ts'

/** A problem settled where balls come to; elsewhere its values are those it started from. */
export interface ReachedSolution extends ShortestPathSolution {
  /** What was settled, nearest to the hole first. */
  readonly states: Int32Array
}

/** Settles a problem near a solved one, over its kept actions, only where balls come to from some strokes. */
export function settleReached(
  model: HoleModel,
  problem: HoleProblem,
  tried: readonly TriedStroke[],
  start: Float64Array,
): ReachedSolution {
  const ends = tried.map((one) => one.ends)
  const states = reachedStates(model, ends, problem.rowsFrom, start)
  problem.settleOnly(states)
  return { ...solveShortestPath(problem, { start, keptOnly: true, tolerance: NEIGHBOUR_TOLERANCE }), states }
}

/** Lines about a line, in whole steps to each side: radians from degrees, leftmost first. */
export function linesAbout(heading: number, mostDegrees: number, stepDegrees: number): number[] {
  const count = Math.round(mostDegrees / stepDegrees)
  return Array.from(
    { length: 2 * count + 1 },
    (_, index) => heading + degreesToRadians((index - count) * stepDegrees),
  )
}
