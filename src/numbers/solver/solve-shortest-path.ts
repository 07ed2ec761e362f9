import type { ShortestPathProblem } from './shortest-path-problem.ts'

/** What a solve returns beside the values: how far it went and how near it is. */
export interface ShortestPathSolution {
  readonly values: Float64Array
  /** Sweeps over all states; a sweep over kept actions counts as one too. */
  readonly sweeps: number
  /** Largest change that one more sweep over all actions made. */
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
  /** Never look beyond the kept actions: a policy improvement among few, for neighbouring problems. */
  readonly keptOnly?: boolean
}

const DEFAULT_TOLERANCE = 1e-7
const DEFAULT_MAXIMUM_SWEEPS = 400

/**
 * Solves by modified policy iteration in Gauss–Seidel order: one sweep over all actions, then sweeps over the few
 * that it kept until they settle, and again, until a sweep over all actions moves no value by more than the
 * tolerance. Visiting the nearest states first lets most of the cost flow outwards in a single sweep.
 *
 * Source: Puterman, *Markov Decision Processes*, 1994, sections 6.5 and 7.2 (modified policy iteration; stochastic shortest paths).
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
  while (sweeps < maximumSweeps) {
    if (!options.keptOnly) {
      residual = sweep(problem, values, true)
      sweeps += 1
      if (residual <= tolerance) break
    }
    // Settling further than the last full sweep moved would be work thrown away at the next change of action.
    const enough = options.keptOnly ? tolerance : Math.max(tolerance / 2, Math.min(residual * 1e-2, 1e-3))
    let change = Number.POSITIVE_INFINITY
    while (change > enough && sweeps < maximumSweeps) {
      change = sweep(problem, values, false)
      sweeps += 1
    }
    if (options.keptOnly) {
      residual = change
      break
    }
  }
  return { values, sweeps, residual, tolerance, converged: residual <= tolerance }
}

/** One pass over all states in order; returns the largest change of a value. */
function sweep(problem: ShortestPathProblem, values: Float64Array, isFull: boolean): number {
  problem.beforeSweep?.(values)
  let largest = 0
  for (const state of problem.order) {
    const value = isFull ? problem.bestOfAll(state, values) : problem.bestKept(state, values)
    const change = Math.abs(value - (values[state] as number))
    if (change > largest) largest = change
    values[state] = value
  }
  return largest
}
