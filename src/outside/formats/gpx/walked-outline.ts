import { distance, type Point } from '#numbers/geometry/point.ts'
import { signedRingArea } from '#numbers/geometry/polygon.ts'
import { polylineLength } from '#numbers/geometry/polyline.ts'
import { thinPolyline } from '#numbers/geometry/thin-polyline.ts'
import { WALK } from './settings.ts'

/** A walk round a piece of ground, as its outline. */
export interface WalkedOutline {
  /** Corners in order, metres in the plane of the walk, the first not repeated; fewer than three when it encloses nothing. */
  readonly corners: readonly Point[]
  /** From its start to where it came back, metres. */
  readonly gapMetres: number
  /** False where it did not come back: then a straight line closes it. */
  readonly isClosed: boolean
}

/** Closes a walk where it comes back to its start, lets go of what was walked beyond that, and thins its jitter. */
export function walkedOutline(walk: readonly Point[]): WalkedOutline {
  const [start] = walk
  if (start === undefined) return { corners: [], gapMetres: 0, isClosed: false }
  const { index, gap } = nearestReturn(walk, start)
  const isClosed = gap <= WALK.closing
  const loop = isClosed ? walk.slice(0, index + 1) : walk
  // Thinned as a ring: turned to begin at the corner furthest from its start, where no thinning can cut one off.
  const far = loop.reduce(
    (best, at, here) => (distance(at, start) > distance(loop[best] ?? start, start) ? here : best),
    0,
  )
  const [there, back] = [loop.slice(0, far + 1), loop.slice(far)]
  const ring = [
    ...thinPolyline(there, WALK.tolerance),
    ...thinPolyline([...back, start], WALK.tolerance).slice(1, -1),
  ]
  const encloses = ring.length >= 3 && Math.abs(signedRingArea(ring)) >= SMALLEST_AREA
  return { corners: encloses ? ring : [], gapMetres: gap, isClosed }
}

/** A line that was walked, its jitter thinned. */
export function walkedLine(walk: readonly Point[]): Point[] {
  return thinPolyline(walk, WALK.tolerance)
}

function nearestReturn(
  walk: readonly Point[],
  start: Point,
): { readonly index: number; readonly gap: number } {
  const length = polylineLength(walk)
  let walked = 0
  let best = { index: walk.length - 1, gap: distance(walk.at(-1) ?? start, start) }
  for (const [index, at] of walk.entries()) {
    walked += index === 0 ? 0 : distance(walk[index - 1] ?? at, at)
    const gap = distance(at, start)
    if (walked >= WALK.returnShare * length && gap < best.gap) best = { index, gap }
  }
  return best
}

/** Less ground than this cannot be told by a walk, square metres: our assumption, a square of two steps. */
const SMALLEST_AREA = 4
