/**
 * The smallest of `values` with at least the share `p` (0 to 1) of the total weight at or below it. Weights must
 * not be negative and need not add up to 1; values of weight 0 are passed over. NaN when there is no weight.
 */
export function weightedQuantile(values: ArrayLike<number>, weights: ArrayLike<number>, p: number): number {
  const order: number[] = []
  let total = 0
  for (let i = 0; i < values.length; i++) {
    const weight = weights[i] ?? 0
    if (weight > 0) {
      order.push(i)
      total += weight
    }
  }
  order.sort((a, b) => (values[a] as number) - (values[b] as number))
  // Rounding in the running sum must not push an exact share on to the next value.
  const wanted = p * total * (1 - 1e-12)
  let below = 0
  for (const index of order) {
    below += weights[index] as number
    if (below >= wanted) return values[index] as number
  }
  const last = order.at(-1)
  return last === undefined ? Number.NaN : (values[last] as number)
}
