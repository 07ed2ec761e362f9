import { distance, type Point } from '#numbers/geometry/point.ts'
import type { Course, HoleLine } from '../course.ts'
import { distanceToPolygon } from '../greens/green-of-hole.ts'
import { GREEN_NEAR_METRES, TEE_NEAR_METRES } from '../settings.ts'

/**
 * Whether a hole line was drawn from green to tee. What names the hole decides first; by place, it needs a green at
 * the start and none at the end: the green of the hole before often lies beside a tee, so one near the start is not
 * enough.
 */
export function isBackwards(course: Course, hole: HoleLine): boolean {
  const [start, end] = [hole.line[0], hole.line.at(-1)]
  if (!start || !end) return false
  const nearerEnd = (point: Point): boolean => distance(point, end) < distance(point, start)
  const own = (feature: { readonly holes: readonly string[] | null }): boolean =>
    feature.holes?.includes(hole.ref) ?? false
  const tees = course.tees.filter(own)
  if (tees.length > 0) return tees.every((tee) => nearerEnd(tee.position))
  const pins = course.pins.filter(own)
  if (pins.length > 0) return pins.every((pin) => !nearerEnd(pin.position))
  const greenAway = (point: Point): number =>
    course.areas
      .filter((area) => area.ground === 'green')
      .reduce(
        (least, area) => Math.min(least, distanceToPolygon(area.polygon, point)),
        Number.POSITIVE_INFINITY,
      )
  if (greenAway(end) <= GREEN_NEAR_METRES) return false
  const fromStart = greenAway(start)
  if (fromStart === 0) return true
  const hasTee = (point: Point): boolean =>
    course.tees.some((tee) => distance(tee.position, point) <= TEE_NEAR_METRES)
  return fromStart <= GREEN_NEAR_METRES && hasTee(end) && !hasTee(start)
}
