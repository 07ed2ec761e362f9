import { lowDiscrepancyPoints } from '#numbers/statistics/low-discrepancy.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'

/**
 * A fixed set of short shots that stands for any: standard normal places in direction, carry and roll. The same for every
 * club, so that none wins by chance, and its own mirror image from left to right.
 */
export interface ShortStrikes {
  readonly count: number
  /** Good strikes first, then fat ones, then thin ones. */
  readonly good: number
  readonly fat: number
  readonly direction: Float64Array
  readonly carry: Float64Array
  readonly roll: Float64Array
}

/** Strikes from a low-discrepancy sequence; both numbers even, `poor` for fat and for thin each. */
export function shortStrikes(size: { readonly good: number; readonly poor: number }): ShortStrikes {
  const sizes = [size.good, size.poor, size.poor]
  const count = sizes.reduce((sum, one) => sum + one, 0)
  const strikes = { count, good: size.good, fat: size.poor }
  const direction = new Float64Array(count)
  const carry = new Float64Array(count)
  const roll = new Float64Array(count)
  let first = 0
  for (const one of sizes) {
    const points = lowDiscrepancyPoints(one)
    for (let k = 0; k < one; k++) {
      direction[first + k] = normalQuantile(points[2 * k] as number)
      carry[first + k] = normalQuantile(points[2 * k + 1] as number)
      // Mirrored strikes share their roll as they share their carry.
      const pair = Math.min(k, one - 1 - k)
      roll[first + k] = normalQuantile((0.5 + (pair + 0.5) * PLASTIC_SHARE) % 1)
    }
    first += one
  }
  return { ...strikes, direction, carry, roll }
}

/** Second power of the reciprocal plastic number: a step that fills the interval evenly beside a golden one (Roberts' R2 sequence). */
const PLASTIC_SHARE = 0.5698402909980532
