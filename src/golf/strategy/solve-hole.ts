import { type ShortestPathSolution, solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import type { HoleModel } from './hole-model.ts'
import { type HoleProblem, holeProblem } from './hole-problem.ts'
import {
  REFINED_ACTIONS,
  REFINED_QUADRATURE,
  REFINED_TOLERANCE,
  SOLVE_QUADRATURE,
  SOLVE_TOLERANCE,
} from './settings.ts'

/** A hole solved: what every place costs, and how the solve went. */
export interface HoleSolution {
  readonly problem: HoleProblem
  /** Expected strokes to hole out from every place. */
  readonly values: Float64Array
  readonly solution: ShortestPathSolution
}

/**
 * Solves a hole for its player and day. With a `quadrature` of its own it is solved with that alone, and not refined, on
 * lines to each side of the pin as the problem has them.
 */
export function solveHole(
  model: HoleModel,
  quadrature?: { readonly good: number; readonly mishit: number },
  aboutPinDegrees?: number,
): HoleSolution {
  if (quadrature) {
    const problem = holeProblem(model, {
      quadrature,
      ...(aboutPinDegrees === undefined ? {} : { aboutPinDegrees }),
    })
    const solution = solveShortestPath(problem, { tolerance: SOLVE_TOLERANCE })
    return { problem, values: solution.values, solution }
  }
  const { kept, solution } = coarse(model)
  return { ...refined(model, kept, solution.values), solution }
}

/** Solves a hole with few strikes. The problem itself, whose tables are large, is let go of. */
function coarse(model: HoleModel): { readonly kept: Int32Array; readonly solution: ShortestPathSolution } {
  const problem = holeProblem(model, { quadrature: SOLVE_QUADRATURE })
  const solution = solveShortestPath(problem, { tolerance: SOLVE_TOLERANCE })
  return { kept: problem.kept, solution }
}

/**
 * Values of the same plan with four times as many strikes. The least of many sums that are each a little wrong is too
 * low: few strikes make a plan too hopeful by up to 0.07 of a stroke where trouble is thick. The actions kept by the
 * solve are weighed again with strikes enough; which others there are does not change that.
 */
function refined(
  model: HoleModel,
  kept: Int32Array,
  start: Float64Array,
): { readonly problem: HoleProblem; readonly values: Float64Array } {
  const problem = holeProblem(model, {
    quadrature: REFINED_QUADRATURE,
    kept,
    tried: REFINED_ACTIONS,
  })
  problem.gather()
  const { values } = solveShortestPath(problem, { start, keptOnly: true, tolerance: REFINED_TOLERANCE })
  return { problem, values }
}
