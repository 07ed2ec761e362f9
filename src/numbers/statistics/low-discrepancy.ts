const GOLDEN_SHARE = (Math.sqrt(5) - 1) / 2

/**
 * `count` points of the open unit square for integrating without noise: `[u0, v0, u1, v1, …]`, equal weights.
 * The u are the midpoints of `count` equal intervals; with an even `count` the v are, twice each, the midpoints
 * of half as many, in the order of the multiples of the golden section, which spreads every stretch of
 * neighbours evenly. The set is its own mirror image in u (`u` and `1 − u` share their v), so that what is
 * mirrored left to right gets exactly mirrored points.
 */
export function lowDiscrepancyPoints(count: number): Float64Array {
  const points = new Float64Array(2 * count)
  const half = Math.ceil(count / 2)
  const multiples = Array.from({ length: half }, (_, i) => (0.5 + i * GOLDEN_SHARE) % 1)
  const order = multiples.map((_, i) => i).sort((a, b) => (multiples[a] as number) - (multiples[b] as number))
  order.forEach((i, place) => {
    const mirrored = count - 1 - i
    const u = (i + 0.5) / count
    const v = (place + 0.5) / half
    points[2 * i] = u
    points[2 * mirrored] = mirrored === i ? u : 1 - u
    points[2 * i + 1] = v
    points[2 * mirrored + 1] = v
  })
  return points
}
