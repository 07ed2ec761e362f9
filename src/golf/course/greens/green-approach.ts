import { headingCrossings } from '#numbers/geometry/heading-crossings.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonCentroid, polygonContains } from '#numbers/geometry/polygon.ts'
import { ahead, headingTo } from '../measures/ahead.ts'

/** A green seen along the line from which it is played. */
export interface GreenApproach {
  /** Direction of play, radians clockwise from the y axis. */
  readonly headingRadians: number
  /** Where the line of approach enters and leaves the green. */
  readonly front: Point
  readonly middle: Point
  readonly back: Point
  readonly depthMetres: number
}

/**
 * A green along the line from a point of play through its centre of area. When that line crosses the green in
 * several pieces, front is the first edge met and back the last; `null` when it misses the green (a ring of a
 * green, or play from inside it).
 */
export function greenApproach(green: Polygon, from: Point): GreenApproach | null {
  const centre = polygonCentroid(green)
  const headingRadians = headingTo(from, centre)
  const crossings = headingCrossings(green, from, headingRadians)
  const first = polygonContains(green, from) ? 0 : crossings[0]
  const last = crossings.at(-1)
  if (first === undefined || last === undefined || last - first < 1e-6) return null
  const at = (metres: number): Point => ahead(from, headingRadians, metres)
  return {
    headingRadians,
    front: at(first),
    middle: at((first + last) / 2),
    back: at(last),
    depthMetres: last - first,
  }
}
