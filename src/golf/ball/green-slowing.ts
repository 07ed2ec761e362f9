import { feetToMetres } from '#numbers/units/units.ts'
import { RAMP_SPEED_METRES_PER_SECOND } from './green-settings.ts'

/**
 * How fast a level green of this speed slows a rolling ball, m/s²: a = v₀²/2S, with v₀ the release speed of the
 * standard ramp and S its reading in feet. This is a itself; the rolling friction that physics papers quote is 7/5 of a/g.
 */
export function greenSlowing(speedFeet: number): number {
  return RAMP_SPEED_METRES_PER_SECOND ** 2 / (2 * feetToMetres(speedFeet))
}
