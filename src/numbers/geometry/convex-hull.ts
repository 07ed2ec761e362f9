import { orient2d } from 'robust-predicates'
import type { Point, Ring } from './point.ts'

/** The corners of the tightest convex outline round places, in order; the places on its sides are left out. */
export function convexHull(places: readonly Point[]): Ring {
  const sorted = [...places].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  if (sorted.length < 3) return sorted
  const lower = chain(sorted)
  const upper = chain(sorted.reverse())
  return [...lower.slice(0, -1), ...upper.slice(0, -1)]
}

/** One side of the hull from the first place to the last, always turning the same way (Andrew's scan; from memory). */
function chain(sorted: readonly Point[]): Point[] {
  const kept: Point[] = []
  for (const point of sorted) {
    for (
      let last = kept.at(-1), before = kept.at(-2);
      last && before;
      last = kept.at(-1), before = kept.at(-2)
    ) {
      if (orient2d(...before, ...last, ...point) < 0) break
      kept.pop()
    }
    kept.push(point)
  }
  return kept
}
