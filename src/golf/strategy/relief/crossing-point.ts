import type { Ground } from '#golf/course/ground.ts'
import { groundRegion } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import { unitePolygons } from '#numbers/geometry/combine-polygons.ts'
import { lastCrossing } from '#numbers/geometry/last-crossing.ts'
import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'

/** Where a ball last crossed the edge of the ground in which it ended, hole frame. `null` when its path crosses no edge of it. */
export function crossingPoint(hole: Hole, ground: Ground, path: readonly Point[]): Point | null {
  return lastCrossing(path, groundRegion(hole, ground))
}

/** The point of an edge of some classes of ground that is nearest to where a person saw the ball cross. */
export function nearestCrossing(
  hole: Hole,
  grounds: readonly Ground[],
  seen: Point,
): { readonly ground: Ground; readonly point: Point; readonly distance: number } | null {
  const edges = grounds.flatMap((ground) =>
    groundRegion(hole, ground).map((polygon) => ({ ground, ...nearestEdge(polygon, seen) })),
  )
  return edges.reduce<(typeof edges)[number] | null>(
    (best, edge) => (best && best.distance <= edge.distance ? best : edge),
    null,
  )
}

/**
 * The one area of a class of ground on whose edge or in which a point lies: surveyed pieces that touch are one. What is
 * painted over it still belongs to it, so that a bridge or a tee does not make two ponds of one.
 */
export function sameArea(hole: Hole, ground: Ground, point: Point): Polygon[] {
  const whole = unitePolygons(hole.areas.filter((area) => area.ground === ground).map((area) => area.polygon))
  return whole.filter(
    (polygon) => polygonContains(polygon, point) || nearestEdge(polygon, point).distance < ON_EDGE_METRES,
  )
}

/** Clipping rounds to a micrometre, so a point on an edge may lie this far off it. */
const ON_EDGE_METRES = 1e-4
