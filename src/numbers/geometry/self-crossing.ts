import { orient2d } from 'robust-predicates'
import type { Point, Ring } from './point.ts'

interface Edge {
  readonly a: Point
  readonly b: Point
  /** The corners before `a` and after `b`. */
  readonly before: Point
  readonly after: Point
  readonly index: number
  readonly minX: number
  readonly maxX: number
}

/**
 * A place where the ring crosses itself or runs back over itself, or `null`. Touching itself in a single point
 * without crossing is no fault; repeated corners are passed over.
 */
export function selfCrossing(ring: Ring): Point | null {
  const corners = ring.filter((point, i) => !isSame(point, ring[(i + 1) % ring.length] as Point))
  if (corners.length < 3) return corners[0] ?? null
  const edges = edgesOf(corners)
  for (const edge of edges) {
    if (side(edge.a, edge.b, edge.after) === 0 && isAhead(edge.b, edge.a, edge.after)) return edge.b
  }
  edges.sort((p, q) => p.minX - q.minX)
  for (let i = 0; i < edges.length; i++) {
    const edge = edges[i] as Edge
    for (let j = i + 1; j < edges.length; j++) {
      const other = edges[j] as Edge
      if (other.minX > edge.maxX) break
      const crossing = areNeighbours(edge, other, corners.length) ? null : crossingOf(edge, other)
      if (crossing !== null) return crossing
    }
  }
  return null
}

function edgesOf(corners: readonly Point[]): Edge[] {
  const count = corners.length
  return corners.map((a, index) => {
    const b = corners[(index + 1) % count] as Point
    const before = corners[(index + count - 1) % count] as Point
    const after = corners[(index + 2) % count] as Point
    return { a, b, before, after, index, minX: Math.min(a[0], b[0]), maxX: Math.max(a[0], b[0]) }
  })
}

function areNeighbours(p: Edge, q: Edge, count: number): boolean {
  const apart = Math.abs(p.index - q.index)
  return apart === 1 || apart === count - 1
}

function crossingOf(p: Edge, q: Edge): Point | null {
  if (
    Math.max(p.a[1], p.b[1]) < Math.min(q.a[1], q.b[1]) ||
    Math.min(p.a[1], p.b[1]) > Math.max(q.a[1], q.b[1])
  )
    return null
  const qa = side(p.a, p.b, q.a)
  const qb = side(p.a, p.b, q.b)
  const pa = side(q.a, q.b, p.a)
  const pb = side(q.a, q.b, p.b)
  if (qa * qb < 0 && pa * pb < 0) return meeting(p, q)
  if (qa === 0 && qb === 0) return overlapOf(p, q)
  if (qa * qb > 0 || pa * pb > 0) return null
  // They meet in a corner of at least one of them. A crossing there shows on the edges that start in the corner.
  if (qa === 0 && pa === 0) return isSame(p.a, q.a) && doCross(p.before, p.a, p.b, q.before, q.b) ? p.a : null
  if (pa === 0 && qb !== 0 && qa !== 0) return side(q.a, q.b, p.before) * pb < 0 ? p.a : null
  if (qa === 0 && pb !== 0 && pa !== 0) return side(p.a, p.b, q.before) * qb < 0 ? q.a : null
  return null
}

// Whether the path before–corner–after changes sides of the path otherBefore–corner–otherAfter.
function doCross(before: Point, corner: Point, after: Point, otherBefore: Point, otherAfter: Point): boolean {
  return isBetween(before, corner, after, otherBefore) !== isBetween(before, corner, after, otherAfter)
}

// Whether `point` lies anticlockwise of corner→from and clockwise of corner→to.
function isBetween(from: Point, corner: Point, to: Point, point: Point): boolean {
  const afterFrom = side(corner, from, point) > 0
  const beforeTo = side(corner, to, point) < 0
  return side(corner, from, to) > 0 ? afterFrom && beforeTo : afterFrom || beforeTo
}

// Edges on one line: the start of their common stretch, or null when they share at most a point.
function overlapOf(p: Edge, q: Edge): Point | null {
  const axis = Math.abs(p.b[0] - p.a[0]) >= Math.abs(p.b[1] - p.a[1]) ? 0 : 1
  const pLow = p.a[axis] <= p.b[axis] ? p.a : p.b
  const qLow = q.a[axis] <= q.b[axis] ? q.a : q.b
  const low = pLow[axis] >= qLow[axis] ? pLow : qLow
  const high = Math.min(Math.max(p.a[axis], p.b[axis]), Math.max(q.a[axis], q.b[axis]))
  return low[axis] < high ? low : null
}

function meeting(p: Edge, q: Edge): Point {
  const px = p.b[0] - p.a[0]
  const py = p.b[1] - p.a[1]
  const qx = q.b[0] - q.a[0]
  const qy = q.b[1] - q.a[1]
  const share = ((q.a[0] - p.a[0]) * qy - (q.a[1] - p.a[1]) * qx) / (px * qy - py * qx)
  return [p.a[0] + px * share, p.a[1] + py * share]
}

// 1 when `point` lies left of the way a→b, −1 right, 0 on it; exact.
function side(a: Point, b: Point, point: Point): number {
  return -Math.sign(orient2d(a[0], a[1], b[0], b[1], point[0], point[1]))
}

// Whether `second` lies on the same side of `corner` as `first`, the three being on one line.
function isAhead(corner: Point, first: Point, second: Point): boolean {
  return (
    (first[0] - corner[0]) * (second[0] - corner[0]) + (first[1] - corner[1]) * (second[1] - corner[1]) > 0
  )
}

function isSame(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1]
}
