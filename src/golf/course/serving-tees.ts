import { distance, type Point } from '#numbers/geometry/point.ts'
import { pointAlong, polylineLength, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { Course, HoleLine, Tee } from './course.ts'
import { TEE_NEAR_METRES, TEE_STRETCH_METRES, TEE_STRETCH_SHARE } from './settings.ts'

/**
 * The tees from which a hole is played, nearest the start of its line first: those that name the hole, and those
 * that name none and stand by the first stretch of its line, nearer to it than to any other hole's first stretch.
 * A tee beside the green of another hole is therefore never mistaken for that hole's.
 */
export function servingTees(course: Course, hole: HoleLine): Tee[] {
  const start = hole.line[0]
  if (!start) return []
  return course.tees
    .filter((tee) => (tee.holes ? tee.holes.includes(hole.ref) : stretchOwner(course, tee.position) === hole))
    .sort((a, b) => distance(a.position, start) - distance(b.position, start))
}

/** The first part of a hole line, on which its tees stand; course plane, at least one point. */
export function teeStretch(line: readonly Point[]): Point[] {
  const length = Math.min(TEE_STRETCH_METRES, TEE_STRETCH_SHARE * polylineLength(line))
  const kept: Point[] = []
  let along = 0
  for (const [index, point] of line.entries()) {
    const previous = line[index - 1]
    if (previous) along += distance(previous, point)
    if (along >= length && index > 0) break
    kept.push(point)
  }
  kept.push(pointAlong(line, length))
  return kept
}

function stretchOwner(course: Course, position: Point): HoleLine | null {
  let owner: HoleLine | null = null
  let nearest = TEE_NEAR_METRES
  for (const hole of course.holes) {
    if (hole.line.length < 2) continue
    const away = projectOnPolyline(teeStretch(hole.line), position).distance
    if (away <= nearest) {
      nearest = away
      owner = hole
    }
  }
  return owner
}
