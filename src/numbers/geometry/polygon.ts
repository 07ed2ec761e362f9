import { orient2d } from 'robust-predicates'
import type { Point, Polygon, Ring } from './point.ts'

/** The smallest upright box around something, metres. */
export interface Bounds {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

/** Area of the outline less its holes, square metres, never negative; either orientation of the rings. */
export function polygonArea(polygon: Polygon): number {
  let area = 0
  polygon.forEach((ring, index) => {
    const part = Math.abs(ringMoments(ring).area)
    area += index === 0 ? part : -part
  })
  return Math.max(0, area)
}

/** Area of a ring, square metres: positive when it runs anticlockwise (y upwards). */
export function signedRingArea(ring: Ring): number {
  return ringMoments(ring).area
}

/**
 * Whether `point` lies inside: even-odd over all rings, decided without rounding error. On the boundary
 * the answer is fixed so that of two areas that share an edge exactly one holds each point of it: left and
 * lower edges are inside, right and upper edges outside.
 */
export function polygonContains(polygon: Polygon, point: Point): boolean {
  const [x, y] = point
  let isInside = false
  for (const ring of polygon) {
    let a = ring[ring.length - 1]
    for (const b of ring) {
      if (a !== undefined && a[1] > y !== b[1] > y && isLeftOfEdge(a, b, x, y)) isInside = !isInside
      a = b
    }
  }
  return isInside
}

/**
 * Whether `(x, y)` lies strictly to the left (smaller x) of the edge `a`–`b`, which must span the height `y`;
 * exact, whatever the rounding.
 */
export function isLeftOfEdge(a: Point, b: Point, x: number, y: number): boolean {
  if (x < a[0] && x < b[0]) return true
  if (x > a[0] && x > b[0]) return false
  // The predicate is negative when the three points turn anticlockwise with y upwards.
  const turn = orient2d(a[0], a[1], b[0], b[1], x, y)
  return b[1] > a[1] ? turn < 0 : turn > 0
}

/** The box around the outline; of a polygon without points, an empty box (`minX` is `Infinity`). */
export function polygonBounds(polygon: Polygon): Bounds {
  let minX = Infinity
  let minY = Infinity
  let maxX = -Infinity
  let maxY = -Infinity
  for (const [x, y] of polygon[0] ?? []) {
    if (x < minX) minX = x
    if (x > maxX) maxX = x
    if (y < minY) minY = y
    if (y > maxY) maxY = y
  }
  return { minX, minY, maxX, maxY }
}

/** Centre of area, holes taken out; of a polygon without area, the mean of its corners. */
export function polygonCentroid(polygon: Polygon): Point {
  let area = 0
  let momentX = 0
  let momentY = 0
  const start = polygon[0]?.[0] ?? [0, 0]
  polygon.forEach((ring, index) => {
    const moments = ringMoments(ring, start)
    // Either orientation: the outline counts as positive and holes as negative.
    const sign = moments.area >= 0 === (index === 0) ? 1 : -1
    area += sign * moments.area
    momentX += sign * moments.x
    momentY += sign * moments.y
  })
  if (area > 0) return [start[0] + momentX / area, start[1] + momentY / area]
  const outline = polygon[0] ?? []
  const count = Math.max(1, outline.length)
  return [
    outline.reduce((sum, p) => sum + p[0], 0) / count,
    outline.reduce((sum, p) => sum + p[1], 0) / count,
  ]
}

// Signed area (anticlockwise positive) and first moments about `from`, near the ring so that large coordinates lose nothing.
function ringMoments(ring: Ring, from: Point = ring[0] ?? [0, 0]): { area: number; x: number; y: number } {
  let area = 0
  let x = 0
  let y = 0
  let a = ring[ring.length - 1]
  for (const b of ring) {
    if (a !== undefined) {
      const ax = a[0] - from[0]
      const ay = a[1] - from[1]
      const bx = b[0] - from[0]
      const by = b[1] - from[1]
      const cross = ax * by - bx * ay
      area += cross / 2
      x += (cross * (ax + bx)) / 6
      y += (cross * (ay + by)) / 6
    }
    a = b
  }
  return { area, x, y }
}
