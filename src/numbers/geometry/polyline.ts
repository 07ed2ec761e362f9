import { distance, type Point } from './point.ts'

/** A point seen from a line, metres. */
export interface LineProjection {
  /** From the line's start to the nearest point on it. */
  readonly along: number
  /**
   * Sideways, right positive: square to the nearest leg. Equal in size to `distance` except beyond an end of
   * the line, where the part along the leg is left out.
   */
  readonly offset: number
  /** Straight to the nearest point on the line. */
  readonly distance: number
}

/** Length along the line, metres. */
export function polylineLength(line: readonly Point[]): number {
  let length = 0
  for (let i = 1; i < line.length; i++) length += distance(line[i - 1] as Point, line[i] as Point)
  return length
}

/** The point `metres` along the line from its start; before the start it is the start, past the end the end. */
export function pointAlong(line: readonly Point[], metres: number): Point {
  let left = metres
  let a = line[0] ?? [0, 0]
  if (left <= 0) return a
  for (const b of line.slice(1)) {
    const leg = distance(a, b)
    if (left < leg) return [a[0] + ((b[0] - a[0]) * left) / leg, a[1] + ((b[1] - a[1]) * left) / leg]
    left -= leg
    a = b
  }
  return a
}

/** Where `point` lies seen along a line of at least one leg; of equally near places the first along the line. */
export function projectOnPolyline(line: readonly Point[], point: Point): LineProjection {
  let best: { share: number; leg: number; along: number; distance: number } | null = null
  let start = 0
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1] as Point
    const b = line[i] as Point
    const length = distance(a, b)
    const share = shareAlong(a, b, point)
    const held = Math.min(1, Math.max(0, share))
    const foot: Point = [a[0] + (b[0] - a[0]) * held, a[1] + (b[1] - a[1]) * held]
    const away = distance(foot, point)
    if (best === null || away < best.distance)
      best = { share, leg: i, along: start + held * length, distance: away }
    start += length
  }
  if (best === null) {
    const away = distance(line[0] ?? [0, 0], point)
    return { along: 0, offset: away, distance: away }
  }
  return {
    along: best.along,
    offset: offsetFrom(line, best.leg, best.share, best.distance, point),
    distance: best.distance,
  }
}

function offsetFrom(line: readonly Point[], leg: number, share: number, away: number, point: Point): number {
  const here = direction(line, leg)
  const corner = line[share > 0 ? leg : leg - 1] as Point
  const right = (d: Point): number => (point[0] - corner[0]) * d[1] - (point[1] - corner[1]) * d[0]
  // Nearest to a bend: the side is told by the mean direction of the two legs.
  const next = share >= 1 ? leg + 1 : share <= 0 ? leg - 1 : leg
  if (next !== leg && next >= 1 && next < line.length) {
    const other = direction(line, next)
    return Math.sign(right([here[0] + other[0], here[1] + other[1]])) * away
  }
  return right(here)
}

function direction(line: readonly Point[], leg: number): Point {
  const a = line[leg - 1] as Point
  const b = line[leg] as Point
  const length = distance(a, b)
  return length === 0 ? [0, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
}

function shareAlong(a: Point, b: Point, point: Point): number {
  const dx = b[0] - a[0]
  const dy = b[1] - a[1]
  const lengthSquared = dx * dx + dy * dy
  return lengthSquared === 0 ? 0 : ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / lengthSquared
}
