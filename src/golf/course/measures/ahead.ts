import type { Point } from '#numbers/geometry/point.ts'

/** The point so many metres from another along a heading (radians clockwise from the y axis). */
export function ahead(from: Point, headingRadians: number, metres: number): Point {
  return [from[0] + metres * Math.sin(headingRadians), from[1] + metres * Math.cos(headingRadians)]
}

/** The heading from one point to another, radians clockwise from the y axis. */
export function headingTo(from: Point, to: Point): number {
  return Math.atan2(to[0] - from[0], to[1] - from[1])
}
