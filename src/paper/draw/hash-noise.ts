/**
 * A number in [0, 1) that depends only on three whole numbers: the seeded irregularity of dots, strokes and
 * crowns. The same place gives the same dot in every drawing, so a picture never shimmers between two plans.
 * Mixing by multiply-and-shift with large odd constants (common practice for integer hashes).
 */
export function hashNoise(column: number, row: number, salt: number): number {
  let hash =
    Math.imul(column | 0, 0x9e3779b1) ^ Math.imul(row | 0, 0x85ebca77) ^ Math.imul(salt | 0, 0xc2b2ae3d)
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d)
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39)
  return ((hash ^ (hash >>> 15)) >>> 0) / 2 ** 32
}
