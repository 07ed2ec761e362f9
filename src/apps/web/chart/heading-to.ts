import type { Point } from '#numbers/geometry/point.ts'

/** The heading from where the ball lies (absent = the markers) to a place, degrees clockwise from the y axis. */
export function headingTo(from: Point | undefined, [x, y]: Point): number {
  const [fromX, fromY] = from ?? [0, 0]
  return (Math.atan2(x - fromX, y - fromY) * 180) / Math.PI
}
