import { headingCrossings } from './heading-crossings.ts'
import { distance, type Point, type Polygon } from './point.ts'

/**
 * Where a path last crosses an outline of `region`, going back from its end: for a path that ends inside, the point
 * where it came in for good. `null` when it never crosses. The polygons of the region must not overlap.
 */
export function lastCrossing(path: readonly Point[], region: readonly Polygon[]): Point | null {
  for (let leg = path.length - 1; leg > 0; leg--) {
    const start = path[leg - 1] as Point
    const end = path[leg] as Point
    const length = distance(start, end)
    if (length === 0) continue
    const back = Math.atan2(start[0] - end[0], start[1] - end[1])
    const nearest = Math.min(
      ...region.map((polygon) => headingCrossings(polygon, end, back)[0] ?? Number.POSITIVE_INFINITY),
    )
    if (nearest > length) continue
    const share = nearest / length
    return [end[0] + (start[0] - end[0]) * share, end[1] + (start[1] - end[1]) * share]
  }
  return null
}
