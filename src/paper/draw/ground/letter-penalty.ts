import type { Area } from '#golf/course/course.ts'
import type { Point, Ring } from '#numbers/geometry/point.ts'
import { pointAlong, polylineLength } from '#numbers/geometry/polyline.ts'
import type { Shape } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { polygonOnSheet, type Sheet } from '../sheet.ts'
import type { GroundMap } from './ground-map.ts'

/** The letters R and Y along the edges of penalty areas, where the edge is inside the frame and not covered. */
export function letterPenalty(areas: readonly Area[], map: GroundMap, sheet: Sheet): Shape[] {
  const letters: Shape[] = []
  const taken: Point[] = []
  for (const area of areas) {
    if (area.ground !== 'penalty-red' && area.ground !== 'penalty-yellow') continue
    const letter = area.ground === 'penalty-red' ? 'R' : 'Y'
    for (const ring of polygonOnSheet(sheet, area.polygon))
      for (const at of placesAlong(ring)) {
        const isOnEdge = isNear(map, at, area.ground)
        const isFree = taken.every(
          (other) => Math.hypot(other[0] - at[0], other[1] - at[1]) > DRAW_SETTINGS.letterSpacing * 0.5,
        )
        if (!isOnEdge || !isFree) continue
        taken.push(at)
        letters.push({
          kind: 'text',
          text: letter,
          at: [at[0], at[1] + 3.2],
          size: 9,
          paint: 'ink',
          face: 'sans-bold',
          anchor: 'middle',
          halo: 2.4,
        })
      }
  }
  return letters
}

function placesAlong(ring: Ring): Point[] {
  const first = ring[0]
  if (first === undefined) return []
  const closed = [...ring, first]
  const length = polylineLength(closed)
  const count = Math.max(2, Math.round(length / DRAW_SETTINGS.letterSpacing))
  return Array.from({ length: count }, (_, index) => pointAlong(closed, (length * (index + 0.25)) / count))
}

/** True when the edge here parts this ground from another, well inside the frame. */
function isNear(map: GroundMap, [x, y]: Point, ground: string): boolean {
  const around: Point[] = [
    [x + 3, y],
    [x - 3, y],
    [x, y + 3],
    [x, y - 3],
  ]
  if (!around.every(([ax, ay]) => map.isInside(ax - 4, ay - 4) && map.isInside(ax + 4, ay + 4))) return false
  const own = around.filter(([ax, ay]) => map.groundAt(ax, ay) === ground).length
  return own > 0 && own < 4
}
