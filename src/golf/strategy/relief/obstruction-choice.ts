import { groundPieces } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { ReliefOption } from '#golf/rules/relief-options.ts'
import { subtractPolygons } from '#numbers/geometry/combine-polygons.ts'
import { discWithin } from '#numbers/geometry/disc-polygon.ts'
import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import { offsetPolygon } from '#numbers/geometry/offset-polygon.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { partIn } from './areas-of-the-course.ts'
import { discNotNearer, notNearer } from './not-nearer.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'
import { spotsInArea } from './spots-in-area.ts'

/** From the ball to the middle of the feet, and from there to the outside of a shoe, metres. Our assumption. */
const STANCE_METRES = 0.8
const FEET_METRES = 0.3
/** Radius of a ball, metres: 1.68 in across (Equipment Rules). */
const BALL_METRES = 0.0213
/** The nearest point is looked for this far away, metres. Our assumption: no path is wider. */
const LOOK_METRES = 25

/**
 * Free relief from a path in the general area (Rules of Golf 2023, 16.1b): one club-length from the nearest point, not
 * nearer the hole, where neither the ball nor the feet of a stroke at the hole are on the path. The feet stand to the
 * left of the line for a right-hander.
 */
export function obstructionChoice(
  hole: Hole,
  option: ReliefOption,
  ball: Point,
  hand: 'right' | 'left',
  clubLengthMetres: number,
): ReliefChoice | EmptyChoice {
  const around = [discWithin(ball, LOOK_METRES)]
  const path = groundPieces(hole, around).find(({ ground }) => ground === 'path')?.polygons ?? []
  const inTheWay = [
    ...path.flatMap((polygon) => offsetPolygon(polygon, BALL_METRES)),
    ...feetOn(path, stanceFrom(ball, hole.pin, hand)),
  ]
  const clear = (shape: readonly Polygon[]): Polygon[] =>
    partIn(hole, subtractPolygons(shape, inTheWay), ['general'])
  const edges = clear(notNearer(hole, around, ball)).map((polygon) => nearestEdge(polygon, ball))
  if (edges.length === 0) return { option, reason: 'no clear ground lies near and not nearer the hole' }
  const { point } = edges.reduce((best, edge) => (edge.distance < best.distance ? edge : best))
  const area = clear(discNotNearer(hole, point, clubLengthMetres, point))
  const spots = spotsInArea(hole, area)
  if (spots.length === 0) return { option, reason: 'no clear ground lies near and not nearer the hole' }
  return { option, reference: point, spots, areaAt: () => area, isValued: true }
}

/** From the ball to the feet of a stroke at the hole. */
function stanceFrom(ball: Point, pin: Point, hand: 'right' | 'left'): Point {
  const away = Math.max(distance(ball, pin), 1e-9)
  const side = (hand === 'right' ? -STANCE_METRES : STANCE_METRES) / away
  return [(pin[1] - ball[1]) * side, -(pin[0] - ball[0]) * side]
}

/** Where a ball lies whose player stands on the path. */
function feetOn(path: readonly Polygon[], [x, y]: Point): Polygon[] {
  return path
    .flatMap((polygon) => offsetPolygon(polygon, FEET_METRES))
    .map((polygon) => polygon.map((ring) => ring.map((point): Point => [point[0] - x, point[1] - y])))
}
