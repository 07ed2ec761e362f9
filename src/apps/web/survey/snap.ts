import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'

/** The nearest corner within so many metres, else the nearest edge, else the place itself: ground that meets is traced once. */
export function snap(
  at: Point,
  outlines: readonly Polygon[],
  corners: readonly Point[],
  metres: number,
): Point {
  const known = [...outlines.flat(2), ...corners]
  const corner = known.reduce<Point | null>(
    (best, one) =>
      distance(one, at) <= metres && (best === null || distance(one, at) < distance(best, at)) ? one : best,
    null,
  )
  if (corner !== null) return corner
  const edges = outlines.map((outline) => nearestEdge(outline, at))
  const edge = edges.reduce((best, one) => (one.distance < best.distance ? one : best), {
    distance: Number.POSITIVE_INFINITY,
    point: at,
  })
  return edge.distance <= metres ? edge.point : at
}
