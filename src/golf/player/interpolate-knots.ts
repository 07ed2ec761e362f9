/** Value at `at` on the straight pieces through `knots`, sorted by first member; flat outside. Any unit. */
export function interpolateKnots(knots: readonly (readonly [number, number])[], at: number): number {
  const first = knots[0]
  if (first === undefined) throw new RangeError('interpolateKnots needs at least one knot')
  if (at <= first[0]) return first[1]
  let low = first
  for (const high of knots) {
    if (at <= high[0]) return low[1] + ((high[1] - low[1]) * (at - low[0])) / (high[0] - low[0])
    low = high
  }
  return low[1]
}
