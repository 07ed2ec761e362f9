import type { Hole } from '#golf/course/hole.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { BEHIND_TEE_METRES, BEYOND_PIN_METRES, CORRIDOR_METRES } from '../settings.ts'

/** The stretch of ground that a plan knows: the corridor of the hole, as a rectangle of its frame. */
export function surveyWindow(hole: Hole): Polygon {
  const xs = hole.line.map(([x]) => x)
  const ys = hole.line.map(([, y]) => y)
  const left = Math.min(...xs) - CORRIDOR_METRES
  const right = Math.max(...xs) + CORRIDOR_METRES
  const bottom = Math.min(...ys) - BEHIND_TEE_METRES
  const top = Math.max(...ys) + BEYOND_PIN_METRES
  return [
    [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
  ]
}

/** Whether a point lies on that ground. */
export function isInSurvey(hole: Hole, [x, y]: Point): boolean {
  const [low, , high] = surveyWindow(hole)[0] as readonly Point[]
  if (!low || !high) return false
  return x >= low[0] && x <= high[0] && y >= low[1] && y <= high[1]
}
