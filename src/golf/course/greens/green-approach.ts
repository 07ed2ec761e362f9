import { headingCrossings } from '#numbers/geometry/heading-crossings.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonCentroid, polygonContains } from '#numbers/geometry/polygon.ts'

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
  const headingRadians = Math.atan2(centre[0] - from[0], centre[1] - from[1])
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

/** The point so many metres from another along a heading (radians clockwise from the y axis). */
export function ahead(from: Point, headingRadians: number, metres: number): Point {
  return [from[0] + metres * Math.sin(headingRadians), from[1] + metres * Math.cos(headingRadians)]
}

/** The pieces of a green on the line across it through a point, as distances right of that point (left negative), in order. */
export function chordsAcross(
  green: Polygon,
  point: Point,
  headingRadians: number,
): [left: number, right: number][] {
  const right = headingRadians + Math.PI / 2
  const cuts = [
    ...headingCrossings(green, point, right + Math.PI).map((metres) => -metres),
    ...headingCrossings(green, point, right),
  ].sort((a, b) => a - b)
  const chords: [number, number][] = []
  for (const [index, cut] of cuts.entries()) {
    const next = cuts[index + 1]
    if (next !== undefined && polygonContains(green, ahead(point, right, (cut + next) / 2)))
      chords.push([cut, next])
  }
  return chords
}
