import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import type { Area, Course, HoleLine } from '../course.ts'
import { GREEN_NEAR_METRES } from '../settings.ts'

/**
 * The green a hole is played to: one that names the hole, else the one its line ends on, else the nearest within
 * 25 m of the line's end that belongs to nobody else; `null` when the survey has none.
 */
export function greenOfHole(course: Course, hole: HoleLine): Area | null {
  const end = hole.line.at(-1)
  if (!end) return null
  const greens = course.areas.filter((area) => area.ground === 'green')
  return (
    nearestArea(
      greens.filter((green) => green.holes?.includes(hole.ref)),
      end,
      Number.POSITIVE_INFINITY,
    ) ??
    nearestArea(greens, end, 0) ??
    nearestArea(
      greens.filter((green) => green.holes === null),
      end,
      GREEN_NEAR_METRES,
    )
  )
}

/** Distance from a point to a piece of ground, metres; 0 inside it. */
export function distanceToPolygon(polygon: Polygon, point: Point): number {
  return polygonContains(polygon, point) ? 0 : nearestEdge(polygon, point).distance
}

function nearestArea(areas: readonly Area[], point: Point, within: number): Area | null {
  let best: Area | null = null
  let nearest = within
  for (const area of areas) {
    const away = distanceToPolygon(area.polygon, point)
    if (away < nearest || (away === nearest && !best)) {
      nearest = away
      best = area
    }
  }
  return best
}
