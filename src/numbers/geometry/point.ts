/** A point or vector on a local plane in metres: `[x, y]`. On a course plane x is east and y north; in a hole frame x is right and y up the first leg. */
export type Point = readonly [x: number, y: number]

/** A closed ring without repetition of its first point; at least three points; either orientation. */
export type Ring = readonly Point[]

/** An area: the first ring is the outline, the others are holes in it. */
export type Polygon = readonly Ring[]

/** Straight-line distance in the plane, metres. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1])
}
