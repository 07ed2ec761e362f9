import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import type { Candidate } from '../evaluate-stroke.ts'
import { AT_REST, outcomeKind, outcomePlace } from '../outcome.ts'
import type { Places } from '../places.ts'

/**
 * How far from the ball the middle good strike that no tree catches finishes, metres; of one in water or out of bounds
 * where it came down, or where it ran over the edge, since there it was hit to.
 */
export function usualTotal(places: Places, { table, ends }: Candidate, x: number, y: number): number {
  const totals = new Float64Array(ends.count)
  const weights = new Float64Array(ends.count)
  for (let end = 0; end < ends.count; end++) {
    const outcome = ends.outcome[end] as number
    const place = outcomePlace(places, outcome)
    const stopped = Math.hypot((places.x[place] as number) - x, (places.y[place] as number) - y)
    const landed = Math.hypot((ends.x[end] as number) - x, (ends.y[end] as number) - y)
    totals[end] = outcomeKind(places, outcome) === AT_REST ? stopped : Math.max(stopped, landed)
    const isCounted = (ends.strike[end] as number) < table.goodCount && ends.isCaught[end] === 0
    weights[end] = isCounted ? (ends.weight[end] as number) : 0
  }
  return weightedQuantile(totals, weights.some((weight) => weight > 0) ? weights : ends.weight, 0.5)
}
