import type { Hole } from '#golf/course/hole.ts'
import { subtractPolygons } from '#numbers/geometry/combine-polygons.ts'
import { discAround, discWithin } from '#numbers/geometry/disc-polygon.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'

/** What of a shape is no nearer the hole than a point. */
export function notNearer(hole: Hole, shape: readonly Polygon[], reference: Point): Polygon[] {
  return subtractPolygons(shape, [discAround(hole.pin, distance(hole.pin, reference))])
}

/** Everything within some metres of a point and no nearer the hole than another. */
export function discNotNearer(hole: Hole, centre: Point, metres: number, reference: Point): Polygon[] {
  return notNearer(hole, [discWithin(centre, metres)], reference)
}
