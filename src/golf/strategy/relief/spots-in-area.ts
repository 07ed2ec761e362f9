import { groundPieces } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import { offsetPolygon } from '#numbers/geometry/offset-polygon.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { polygonBounds, polygonContains } from '#numbers/geometry/polygon.ts'
import { areaOfCourse } from './areas-of-the-course.ts'

/** A ball is dropped this far inside the edge of its area, metres: two widths of a ball. Our assumption. */
export const INSIDE_EDGE_METRES = 0.08
/** Spots on a grid of this step, metres, and of the second in an area wider than the third. Our assumption: values change by under 0.01 of a stroke over the step. */
const STEP_METRES = 1
const WIDE_STEP_METRES = 3
const WIDE_METRES = 12

/**
 * Places worth weighing in a relief area: for each class of ground the one nearest the hole and those furthest to
 * each side, and a grid over it. None in water or out of bounds, even where the Rules would let a ball be dropped
 * there.
 */
export function spotsInArea(hole: Hole, area: readonly Polygon[]): Point[] {
  return groundPieces(hole, area)
    .filter(({ ground }) => !['out', 'penalty-area'].includes(areaOfCourse(ground)))
    .flatMap(({ polygons }) => polygons)
    .flatMap((polygon) => offsetPolygon(polygon, -INSIDE_EDGE_METRES))
    .flatMap((polygon) => spotsIn(hole, polygon))
}

function spotsIn(hole: Hole, polygon: Polygon): Point[] {
  const corners = polygon.flat()
  const first = corners[0]
  if (!first) return []
  const turn = (point: Point): number =>
    (point[0] - first[0]) * (hole.pin[1] - first[1]) - (point[1] - first[1]) * (hole.pin[0] - first[0])
  const nearest = least(corners, (point) => distance(point, hole.pin))
  return [nearest, least(corners, turn), least(corners, (point) => -turn(point)), ...gridIn(polygon, nearest)]
}

/** Grid points inside, counted from a spot of the area itself, so that a mirrored area has mirrored spots. */
function gridIn(polygon: Polygon, [x, y]: Point): Point[] {
  const { minX, maxX, minY, maxY } = polygonBounds(polygon)
  const step = Math.max(maxX - minX, maxY - minY) > WIDE_METRES ? WIDE_STEP_METRES : STEP_METRES
  const points: Point[] = []
  for (let column = Math.ceil((minX - x) / step); x + column * step <= maxX; column++)
    for (let row = Math.ceil((minY - y) / step); y + row * step <= maxY; row++) {
      const point: Point = [x + column * step, y + row * step]
      if (polygonContains(polygon, point)) points.push(point)
    }
  return points
}

function least(points: readonly Point[], of: (point: Point) => number): Point {
  return points.reduce((best, point) => (of(point) < of(best) ? point : best))
}
