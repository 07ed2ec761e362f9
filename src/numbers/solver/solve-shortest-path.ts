import type { ShortestPathProblem } from './shortest-path-problem.ts'

/** What a solve returns beside the values: how far it went and how near it is. */
export interface ShortestPathSolution {
  readonly values: Float64Array
  /** Sweeps over all states; a sweep over kept actions counts as one too. */
  readonly sweeps: number
  /** Largest change that the last sweep over all actions (over kept ones, if only they were asked for) made. */
  readonly residual: number
  readonly tolerance: number
  readonly converged: boolean
}

export interface SolveOptions {
  /** Largest Bellman residual that counts as solved. */
  readonly tolerance?: number
  readonly maximumSweeps?: number
  /** Values to start from instead of the problem's own, e.g. those of a neighbouring problem. Not written to. */
  readonly start?: Float64Array
  /** Never look beyond the kept actions: an improvement among few, for neighbouring problems. */
  readonly keptOnly?: boolean
}

const DEFAULT_TOLERANCE = 1e-7
const DEFAULT_MAXIMUM_SWEEPS = 2000

/**
 * Solves by modified policy iteration: a sweep over all actions, then sweeps over the few that it kept until they
 * settle, and again, until a sweep over all actions moves no value by more than the tolerance. Settling in order
 * from the end lets most of the cost flow outwards in a single sweep.
 *
 * Source: Puterman, *Markov Decision Processes*, 1994, sections 6.5 and 7.2.
 */
export function solveShortestPath(
  problem: ShortestPathProblem,
  options: SolveOptions = {},
): ShortestPathSolution {
  const tolerance = options.tolerance ?? DEFAULT_TOLERANCE
  const maximumSweeps = options.maximumSweeps ?? DEFAULT_MAXIMUM_SWEEPS
  const values = options.start ? Float64Array.from(options.start) : problem.startValues()
  let sweeps = 0
  let residual = Number.POSITIVE_INFINITY
  while (sweeps < maximumSweeps && residual > tolerance) {
    if (!options.keptOnly) {
      residual = problem.improve(values)
      sweeps += 1
      if (residual <= tolerance) break
    }
    // Settling much further than the last improvement moved would be thrown away at the next change of action.
    const enough = options.keptOnly ? tolerance : Math.max(tolerance / 10, Math.min(residual * 1e-3, 1e-4))
    let change = Number.POSITIVE_INFINITY
    while (change > enough && sweeps < maximumSweeps) {
      change = problem.settle(values)
      sweeps += 1
    }
    if (options.keptOnly) residual = change
  }
  return { values, sweeps, residual, tolerance, converged: residual <= tolerance }
}
