import { HEIGHT_PARTS } from './flight-settings.ts'

/**
 * Heights above ground that rises by `grade` metres a metre, at equal parts of the carry, as shares of the carry. `path`
 * is a flight point by point: metres along, metres up, the landing last. A flight below the ground's own line counts as
 * at the ground.
 */
export function heightProfile(path: readonly number[], grade: number): Float64Array {
  const heights = new Float64Array(HEIGHT_PARTS + 1)
  const carry = path.at(-2) ?? 0
  if (carry <= 0) return heights
  let point = 0
  for (let part = 1; part < HEIGHT_PARTS; part++) {
    const along = (carry * part) / HEIGHT_PARTS
    while (point + 2 < path.length - 2 && (path[point + 2] as number) < along) point += 2
    const [from, low, to, high] = path.slice(point, point + 4) as [number, number, number, number]
    const share = to > from ? (along - from) / (to - from) : 0
    heights[part] = Math.max(0, low + share * (high - low) - grade * along) / carry
  }
  return heights
}
