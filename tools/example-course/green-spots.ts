import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import type { Point, Ring } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { fours, type GreenDesign } from './hole-design.ts'
import type { LineOfPlay } from './line-of-play.ts'

/** A height as a person with a level takes it on a green. */
export interface Spot {
  readonly position: Point
  /** Above the middle of the green, metres, to the centimetre. */
  readonly above: number
}

const APART = 6
/** Heights are taken so far beyond the edge too: false fronts and run-offs go on there. */
const BEYOND_EDGE = 4

/** The spot heights of a green with contours: a net of places, and two rows along every step. Empty for a plane. */
export function greenSpots(green: GreenDesign, play: LineOfPlay, outline: Ring): Spot[] {
  const { contours } = green
  if (!contours) return []
  const reach = green.long / 2 + BEYOND_EDGE
  const net: Point[] = []
  for (let along = -Math.floor(reach / APART); along * APART <= reach; along++)
    for (let off = -Math.floor(reach / APART); off * APART <= reach; off++)
      net.push([along * APART, off * APART])
  const rows = fours(contours.steps).flatMap(([at, turn, , over]) =>
    [-0.55, 0.55].flatMap((share) =>
      Array.from({ length: 9 }, (_, k): Point => {
        const [ahead, across] = [at + share * over, (k - 4) * 4.5]
        const [sin, cos] = [Math.sin(radians(turn)), Math.cos(radians(turn))]
        return [ahead * cos - across * sin, ahead * sin + across * cos]
      }),
    ),
  )
  return withoutNear([...rows, ...net])
    .map((place) => ({ place, position: play.toPlane([play.lengthMetres + place[0], place[1]]) }))
    .filter(({ position }) => isOnOrBy(outline, position))
    .map(({ place, position }) => ({
      position,
      above: Math.round(100 * (rise(green, place) - rise(green, [0, 0]))) / 100,
    }))
}

/** Nobody takes a height beside another one. */
function withoutNear(places: readonly Point[]): Point[] {
  const kept: Point[] = []
  for (const place of places)
    if (kept.every(([x, y]) => Math.hypot(place[0] - x, place[1] - y) > 2.4)) kept.push(place)
  return kept
}

function isOnOrBy(outline: Ring, position: Point): boolean {
  return polygonContains([outline], position) || nearestEdge([outline], position).distance <= BEYOND_EDGE
}

/** Height over the middle of the plane, metres. */
function rise(green: GreenDesign, [along, off]: Point): number {
  const toward = radians(green.fallTowardDegrees)
  const plane = -(green.fallPercent / 100) * (along * Math.cos(toward) + off * Math.sin(toward))
  const steps = fours(green.contours?.steps ?? []).map(([at, turn, height, over]) => {
    const ahead = along * Math.cos(radians(turn)) + off * Math.sin(radians(turn))
    return (height / 2) * Math.tanh((3 * (ahead - at)) / over)
  })
  const mounds = fours(green.contours?.mounds ?? []).map(
    ([x, y, height, reach]) => height * Math.exp(-((along - x) ** 2 + (off - y) ** 2) / (2 * reach * reach)),
  )
  return [plane, ...steps, ...mounds].reduce((sum, part) => sum + part, 0)
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}
