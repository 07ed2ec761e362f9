import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonCentroid } from '#numbers/geometry/polygon.ts'
import { pointAlong, projectOnPolyline } from '#numbers/geometry/polyline.ts'

/** Where the metres of a box count from, and which way is on: hole frame, `onward` one metre long. */
export interface BoxAxes {
  readonly origin: Point
  readonly onward: Point
}

/** The box about a hazard, square to the leg of the hole beside it. */
export interface HazardBox extends BoxAxes {
  /** Its sides from the origin, metres: `near` and `far` onwards, `left` and `right` to the right. */
  readonly near: number
  readonly far: number
  readonly left: number
  readonly right: number
}

/** Ahead of and behind a place, to tell which way the line runs there, metres. */
const ASIDE_METRES = 0.5

/** The box about a hazard of a hole whose line is given, markers first. */
export function hazardBox(polygon: Polygon, line: readonly Point[]): HazardBox {
  const origin = polygonCentroid(polygon)
  const { along } = projectOnPolyline(line, origin)
  const [before, after] = [pointAlong(line, along - ASIDE_METRES), pointAlong(line, along + ASIDE_METRES)]
  const length = Math.hypot(after[0] - before[0], after[1] - before[1]) || 1
  const axes = {
    origin,
    onward: [(after[0] - before[0]) / length, (after[1] - before[1]) / length],
  } as const
  const places = (polygon[0] ?? []).map((point) => inBox(axes, point))
  const [across, on] = [places.map(([u]) => u), places.map(([, v]) => v)]
  return {
    ...axes,
    near: Math.min(...on),
    far: Math.max(...on),
    left: Math.min(...across),
    right: Math.max(...across),
  }
}

/** A place of a box, metres to the right and onwards from its origin, in the hole frame. */
export function fromBox({ origin, onward }: BoxAxes, [right, on]: Point): Point {
  return [origin[0] + right * onward[1] + on * onward[0], origin[1] - right * onward[0] + on * onward[1]]
}

/** A place of the hole frame in a box: metres to the right and onwards from its origin. */
export function inBox({ origin, onward }: BoxAxes, [x, y]: Point): Point {
  const [dx, dy] = [x - origin[0], y - origin[1]]
  return [dx * onward[1] - dy * onward[0], dx * onward[0] + dy * onward[1]]
}
