import { lowDiscrepancyPoints } from '#numbers/statistics/low-discrepancy.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'

/**
 * A fixed set of strikes that stands for any club's mixture: places in the direction distribution and in the
 * carry distribution. The same set for every club and line, so that no club wins by chance, and its own mirror
 * image from left to right.
 */
export interface Strikes {
  /** Good strikes first. */
  readonly count: number
  readonly goodCount: number
  /** Place in the distribution of direction, 0–1. */
  readonly directionShare: Float64Array
  /** Standard normal place in the distribution of carry. */
  readonly carryDeviate: Float64Array
}

/** Strikes from a low-discrepancy sequence, good ones and mishits apart; both numbers even. */
export function strikesOf(size: { readonly good: number; readonly mishit: number }): Strikes {
  const count = size.good + size.mishit
  const directionShare = new Float64Array(count)
  const carryDeviate = new Float64Array(count)
  for (const [first, points] of [
    [0, lowDiscrepancyPoints(size.good)],
    [size.good, lowDiscrepancyPoints(size.mishit)],
  ] as const)
    for (let k = 0; 2 * k < points.length; k++) {
      directionShare[first + k] = points[2 * k] as number
      carryDeviate[first + k] = normalQuantile(points[2 * k + 1] as number)
    }
  return { count, goodCount: size.good, directionShare, carryDeviate }
}
