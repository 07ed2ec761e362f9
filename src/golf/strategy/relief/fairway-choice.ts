import { groundRegion } from '#golf/course/ground-pieces.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { ReliefOption } from '#golf/rules/relief-options.ts'
import { intersectPolygons } from '#numbers/geometry/combine-polygons.ts'
import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { partIn } from './areas-of-the-course.ts'
import { notNearer } from './not-nearer.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'
import { spotsInArea } from './spots-in-area.ts'
import { surveyWindow } from './survey-window.ts'

/**
 * Relief by the fairway for a ball lost or out of bounds (Model Local Rule E-5): between the lines from the hole through
 * the ball's reference point and through the nearest fairway not nearer the hole, with `sideMetres` outside each, not
 * nearer the hole than the ball's reference point, in the general area. It reaches back as far as the survey.
 */
export function fairwayChoice(
  hole: Hole,
  option: ReliefOption,
  reference: Point,
  sideMetres: number,
): ReliefChoice | EmptyChoice {
  const fairway = nearestFairway(hole, reference)
  if (fairway === null) return { option, reason: 'no fairway of this hole lies as far from the hole' }
  const between = intersectPolygons(
    [surveyWindow(hole)],
    [fanBetween(hole.pin, reference, fairway, sideMetres, reachOf(hole))],
  )
  const area = partIn(hole, notNearer(hole, between, reference), ['general'])
  const spots = spotsInArea(hole, area)
  if (spots.length === 0)
    return { option, reason: 'no general area lies between the two lines and no nearer the hole' }
  return { option, reference, spots, areaAt: () => area, isValued: true }
}

/** The nearest point of the hole's fairway that is no nearer the hole; `null` when there is none. */
export function nearestFairway(hole: Hole, reference: Point): Point | null {
  const back = notNearer(hole, groundRegion(hole, 'fairway'), reference)
  if (back.some((polygon) => polygonContains(polygon, reference))) return reference
  const edges = back.map((polygon) => nearestEdge(polygon, reference))
  return edges.length === 0
    ? null
    : edges.reduce((best, edge) => (edge.distance < best.distance ? edge : best)).point
}

/** The lines through two points from the hole outwards, the ground between them, and a strip outside each. */
function fanBetween(pin: Point, first: Point, second: Point, side: number, reach: number): Polygon {
  const toFirst = headingFrom(pin, first)
  // Signed and less than half a turn, so that the ground between is the narrow side.
  const turn = wholeTurn(headingFrom(pin, second) - toFirst)
  const outside = turn < 0 ? 1 : -1
  const at = (heading: number, along: number, aside: number): Point => [
    pin[0] + along * Math.sin(heading) + aside * Math.cos(heading),
    pin[1] + along * Math.cos(heading) - aside * Math.sin(heading),
  ]
  const pieces = 8
  return [
    [
      at(toFirst, 0, outside * side),
      at(toFirst, reach, outside * side),
      ...Array.from({ length: pieces + 1 }, (_, piece) => at(toFirst + (turn * piece) / pieces, reach, 0)),
      at(toFirst + turn, reach, -outside * side),
      at(toFirst + turn, 0, -outside * side),
    ],
  ]
}

/** Further than any place of the survey, arcs cut short included. */
function reachOf(hole: Hole): number {
  const corners = surveyWindow(hole)[0] ?? []
  return 2 * Math.max(...corners.map((corner) => distance(corner, hole.pin)))
}

function headingFrom(from: Point, to: Point): number {
  return Math.atan2(to[0] - from[0], to[1] - from[1])
}

function wholeTurn(radians: number): number {
  return radians - 2 * Math.PI * Math.round(radians / (2 * Math.PI))
}
