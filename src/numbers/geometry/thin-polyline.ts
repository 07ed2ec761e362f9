import { nearestEdge } from './nearest-edge.ts'
import type { Point } from './point.ts'

/**
 * Some of the line's own points, in order and both ends among them, from whose legs no point left out lies further than
 * `tolerance` (metres), by the method of Ramer (1972) and Douglas and Peucker (1973).
 */
export function thinPolyline(line: readonly Point[], tolerance: number): Point[] {
  const isKept = line.map((_, index) => index === 0 || index === line.length - 1)
  // A list and no recursion: a long walk may be split point by point.
  const legs: [number, number][] = [[0, line.length - 1]]
  for (let leg = legs.pop(); leg !== undefined; leg = legs.pop()) {
    const [from, to] = leg
    let [furthest, away] = [0, tolerance]
    for (let index = from + 1; index < to; index++) {
      const { distance } = nearestEdge([[line[from] as Point, line[to] as Point]], line[index] as Point)
      if (distance > away) [furthest, away] = [index, distance]
    }
    if (furthest === 0) continue
    isKept[furthest] = true
    legs.push([from, furthest], [furthest, to])
  }
  return line.filter((_, index) => isKept[index])
}
