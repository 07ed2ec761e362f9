import { headingCrossings } from '#numbers/geometry/heading-crossings.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { ahead } from './ahead.ts'
import type { Interval } from './intervals.ts'

/**
 * The pieces of a polygon on the straight line through a point square to a heading (radians clockwise from the y
 * axis), as distances to the right of the point, left negative, in order.
 */
export function chordsAcross(polygon: Polygon, point: Point, headingRadians: number): Interval[] {
  return chordsAlong(polygon, point, headingRadians + Math.PI / 2)
}

/** The pieces of a polygon on the straight line through a point along a heading, as distances ahead of the point. */
function chordsAlong(polygon: Polygon, point: Point, headingRadians: number): Interval[] {
  const cuts = [
    ...headingCrossings(polygon, point, headingRadians + Math.PI).map((metres) => -metres),
    ...headingCrossings(polygon, point, headingRadians),
  ].sort((a, b) => a - b)
  const chords: Interval[] = []
  for (const [index, from] of cuts.entries()) {
    const to = cuts[index + 1]
    if (to === undefined || to - from < 1e-9) continue
    if (polygonContains(polygon, ahead(point, headingRadians, (from + to) / 2))) chords.push([from, to])
  }
  return chords
}

/** The stretches of a line inside a polygon, as distances along the line, in order. */
export function stretchesInside(polygon: Polygon, line: readonly Point[]): Interval[] {
  const inside: Interval[] = []
  let travelled = 0
  for (const [index, to] of line.entries()) {
    const from = line[index - 1]
    if (!from) continue
    const length = Math.hypot(to[0] - from[0], to[1] - from[1])
    const heading = Math.atan2(to[0] - from[0], to[1] - from[1])
    for (const [a, b] of chordsAlong(polygon, from, heading)) {
      const [start, end] = [Math.max(0, a), Math.min(length, b)]
      if (end > start) inside.push([travelled + start, travelled + end])
    }
    travelled += length
  }
  return joined(inside)
}

/** Stretches that meet at a bend of the line are one. */
function joined(stretches: readonly Interval[]): Interval[] {
  const whole: [number, number][] = []
  for (const [from, to] of stretches) {
    const last = whole.at(-1)
    if (last && from - last[1] < 1e-6) last[1] = to
    else whole.push([from, to])
  }
  return whole
}
