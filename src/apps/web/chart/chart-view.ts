import type { Point } from '#numbers/geometry/point.ts'
import type { Sheet, SheetView } from '#paper/draw/sheet.ts'
import { DESK_SETTINGS } from '../settings.ts'

/** How the chart is moved and enlarged on the screen before it is engraved anew: `at → scale × at + [x, y]`, CSS pixels. */
export interface Gesture {
  readonly scale: number
  readonly x: number
  readonly y: number
}

export const AT_REST: Gesture = { scale: 1, x: 0, y: 0 }

/** The gesture enlarged further about a place on the screen. */
export function enlarged(gesture: Gesture, factor: number, [x, y]: Point): Gesture {
  return {
    scale: gesture.scale * factor,
    x: x + (gesture.x - x) * factor,
    y: y + (gesture.y - y) * factor,
  }
}

/** The gesture carried so far. */
export function carried(gesture: Gesture, [x, y]: Point): Gesture {
  return { ...gesture, x: gesture.x + x, y: gesture.y + y }
}

/**
 * What is seen after a gesture over a sheet that shows `view` of a hole whose whole lies on `whole`: kept within the
 * whole hole and the largest scale; `null` = the whole hole.
 */
export function viewAfter(
  whole: Sheet,
  sheet: Sheet,
  view: SheetView | null,
  gesture: Gesture,
): SheetView | null {
  const before = view?.scale ?? 1
  const scale = Math.min(DESK_SETTINGS.largestScale, before * gesture.scale)
  if (scale < LEAST_SCALE) return null
  const { left, right, top, bottom } = sheet.frame
  const middle: Point = [(left + right) / 2, (top + bottom) / 2]
  // The place that the gesture carried into the middle of the frame.
  const [x, y] = sheet.toHole([
    (middle[0] - gesture.x) / gesture.scale,
    (middle[1] - gesture.y) / gesture.scale,
  ])
  const share = 1 - 1 / scale
  const [lowest, highest] = [whole.toHole([left, bottom]), whole.toHole([right, top])]
  return {
    scale,
    middle: [held(x, lowest[0], highest[0], share), held(y, lowest[1], highest[1], share)],
  }
}

/** Keeps a middle so far inside both ends that nothing beyond them is seen. */
function held(at: number, low: number, high: number, share: number): number {
  const [middle, half] = [(low + high) / 2, ((high - low) / 2) * share]
  return Math.min(middle + half, Math.max(middle - half, at))
}

/** Under this the whole hole is shown. */
const LEAST_SCALE = 1.02
