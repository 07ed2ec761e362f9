const GOLDEN_SHARE = (Math.sqrt(5) - 1) / 2

/**
 * `count` points of the open unit square for integrating without noise: `[u0, v0, u1, v1, …]`, equal weights.
 * The u are the midpoints of `count` equal intervals; the v step on by the golden section, which keeps every
 * stretch of neighbours spread evenly. The set is its own mirror image in u (`u` and `1 − u` share their v), so
 * that what is mirrored left to right gets exactly mirrored points.
 */
export function lowDiscrepancyPoints(count: number): Float64Array {
  const points = new Float64Array(2 * count)
  const half = Math.ceil(count / 2)
  for (let i = 0; i < half; i++) {
    const u = (i + 0.5) / count
    const v = (0.5 + i * GOLDEN_SHARE) % 1
    points[2 * i] = u
    points[2 * i + 1] = v
    const mirrored = count - 1 - i
    points[2 * mirrored] = mirrored === i ? 0.5 : 1 - u
    points[2 * mirrored + 1] = v
  }
  return points
}
