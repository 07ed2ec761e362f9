import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonBounds, polygonContains } from '#numbers/geometry/polygon.ts'
import { projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { Area, Tree } from '../course.ts'
import { groundCode } from '../ground.ts'
import { CORRIDOR_HALF_WIDTH_METRES } from '../settings.ts'

/**
 * The ground of a hole, in painting order: what names the hole, and what comes within 90 m of its line, whole areas,
 * never cut. Ground is there whoever it belongs to; only a boundary that names other holes is out of bounds for
 * those alone (internal out of bounds by Local Rule; from memory).
 */
export function corridorAreas(areas: readonly Area[], ref: string, line: readonly Point[]): Area[] {
  return areas
    .filter((area) => {
      if (area.holes?.includes(ref)) return true
      if (area.holes && area.ground === 'out') return false
      return isWithin(area.polygon, line, CORRIDOR_HALF_WIDTH_METRES)
    })
    .sort((a, b) => groundCode(a.ground) - groundCode(b.ground))
}

/** The single trees within 90 m of a hole's line. */
export function corridorTrees(trees: readonly Tree[], line: readonly Point[]): Tree[] {
  return trees.filter((tree) => projectOnPolyline(line, tree.position).distance <= CORRIDOR_HALF_WIDTH_METRES)
}

/** Whether a piece of ground comes within so many metres of a line. */
export function isWithin(polygon: Polygon, line: readonly Point[], metres: number): boolean {
  return boundsMeet(polygon, line, metres) && distanceToLine(polygon, line) <= metres
}

/** The least distance between a piece of ground and a line, metres; 0 when the line enters it. */
export function distanceToLine(polygon: Polygon, line: readonly Point[]): number {
  // Two pieces of straight line that do not cross are nearest at an end of one of them.
  let least = Number.POSITIVE_INFINITY
  for (const point of line) {
    if (polygonContains(polygon, point)) return 0
    least = Math.min(least, nearestEdge(polygon, point).distance)
  }
  for (const ring of polygon)
    for (const [index, from] of ring.entries()) {
      least = Math.min(least, projectOnPolyline(line, from).distance)
      const to = ring[(index + 1) % ring.length]
      if (to && line.some((point, at) => at > 0 && isCrossing(from, to, line[at - 1] ?? point, point)))
        return 0
    }
  return least
}

function boundsMeet(polygon: Polygon, line: readonly Point[], metres: number): boolean {
  const box = polygonBounds(polygon)
  const xs = line.map((point) => point[0])
  const ys = line.map((point) => point[1])
  return (
    Math.min(...xs) - metres <= box.maxX &&
    Math.max(...xs) + metres >= box.minX &&
    Math.min(...ys) - metres <= box.maxY &&
    Math.max(...ys) + metres >= box.minY
  )
}

function isCrossing(a: Point, b: Point, c: Point, d: Point): boolean {
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}

function side(from: Point, to: Point, point: Point): number {
  return (to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0])
}
