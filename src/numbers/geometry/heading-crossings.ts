import type { Point, Polygon } from './point.ts'

/**
 * Distances in metres, nearest first, at which a straight walk from `from` along `headingRadians` (clockwise
 * from the y axis) crosses the boundary of `polygon`, holes included. The number is odd when the walk starts
 * inside. A corner that is only touched counts twice or not at all, so that in and out always alternate.
 */
export function headingCrossings(polygon: Polygon, from: Point, headingRadians: number): number[] {
  const dx = Math.sin(headingRadians)
  const dy = Math.cos(headingRadians)
  const crossings: number[] = []
  for (const ring of polygon) {
    let a = ring[ring.length - 1]
    for (const b of ring) {
      if (a !== undefined) {
        const ax = a[0] - from[0]
        const ay = a[1] - from[1]
        const bx = b[0] - from[0]
        const by = b[1] - from[1]
        const sideA = ax * dy - ay * dx
        const sideB = bx * dy - by * dx
        if (sideA > 0 !== sideB > 0) {
          const share = sideA / (sideA - sideB)
          const metres = (ax + (bx - ax) * share) * dx + (ay + (by - ay) * share) * dy
          if (metres >= 0) crossings.push(metres)
        }
      }
      a = b
    }
  }
  return crossings.sort((p, q) => p - q)
}
