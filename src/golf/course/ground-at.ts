import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds, polygonContains } from '#numbers/geometry/polygon.ts'
import type { Ground } from './ground.ts'
import type { Hole } from './hole.ts'
import { DEFAULT_GROUND, paintedAreas } from './painted-areas.ts'

/** The ground at a point of the hole frame, told from the surveyed outlines themselves and not from cells. */
export function groundAt(hole: Hole, point: Point): Ground {
  return groundReader(hole)(point)
}

/** The same for many points of one hole. */
export function groundReader(hole: Hole): (point: Point) => Ground {
  const topFirst = paintedAreas(hole)
    .reverse()
    .map((area) => ({ area, box: polygonBounds(area.polygon) }))
  return (point) => {
    const [x, y] = point
    for (const { area, box } of topFirst) {
      if (x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) continue
      if (polygonContains(area.polygon, point)) return area.ground
    }
    return DEFAULT_GROUND
  }
}
