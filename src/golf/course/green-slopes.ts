import type { Point } from '#numbers/geometry/point.ts'
import { radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import { greenSurface } from './green-surface.ts'
import { placesInside } from './greens/places-inside.ts'
import type { Hole } from './hole.ts'

/** How a green slopes at one place. */
export interface GreenSlope {
  readonly at: Point
  readonly percent: number
  /** Downhill, degrees clockwise from the y axis of the hole frame. */
  readonly towardDegrees: number
}

/** The slopes of a hole's green on a square grid, in the hole frame; none where the survey lacks the green. */
export function greenSlopes(hole: Hole, stepMetres: number): readonly GreenSlope[] {
  if (hole.green === null) return []
  const surface = greenSurface(hole)
  return placesInside(hole.green, stepMetres).map((at) => {
    const [riseX, riseY] = surface.gradientAt(...at)
    return {
      at,
      percent: 100 * Math.hypot(riseX, riseY),
      towardDegrees: wholeTurn(radiansToDegrees(Math.atan2(-riseX, -riseY))),
    }
  })
}
