import type { Point, Polygon } from './point.ts'

/** The place on a boundary that is nearest to a point. */
export interface NearestEdge {
  /** Metres, 0 on the boundary, never negative: inside or outside is not told. */
  readonly distance: number
  readonly point: Point
}

/** The nearest place on any ring of `polygon`; of a polygon without points, `distance` is `Infinity`. */
export function nearestEdge(polygon: Polygon, point: Point): NearestEdge {
  let best = Infinity
  let bestX = point[0]
  let bestY = point[1]
  for (const ring of polygon) {
    let a = ring[ring.length - 1]
    for (const b of ring) {
      if (a !== undefined) {
        const dx = b[0] - a[0]
        const dy = b[1] - a[1]
        const lengthSquared = dx * dx + dy * dy
        const share =
          lengthSquared === 0 ? 0 : ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / lengthSquared
        const held = Math.min(1, Math.max(0, share))
        const x = held === 1 ? b[0] : a[0] + dx * held
        const y = held === 1 ? b[1] : a[1] + dy * held
        const squared = (point[0] - x) ** 2 + (point[1] - y) ** 2
        if (squared < best) {
          best = squared
          bestX = x
          bestY = y
        }
      }
      a = b
    }
  }
  return { distance: Math.sqrt(best), point: [bestX, bestY] }
}
