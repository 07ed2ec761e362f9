import { ramerDouglasPeuckerD } from 'clipper2-ts'
import type { Point } from './point.ts'

/**
 * The line with the fewest of its own points from which no point left out lies further than `tolerance` (metres), by the
 * method of Ramer (1972) and Douglas and Peucker (1973). Both ends stay; of a line that ends where it began the end goes.
 */
export function thinPolyline(line: readonly Point[], tolerance: number): Point[] {
  const thinned = ramerDouglasPeuckerD(
    line.map(([x, y]) => ({ x, y })),
    tolerance,
  )
  return thinned.map(({ x, y }) => [x, y])
}
