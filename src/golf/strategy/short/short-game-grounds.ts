import { greenSlowing } from '#golf/ball/green-slowing.ts'
import type { Ground } from '#golf/course/ground.ts'
import { byGround, type ShortScene } from './short-scene.ts'

/**
 * How each ground slows a rolling ball, as feet on the standard ramp; the green's is the day's. Common practice in order;
 * sizes our assumption (mown fairways read 4 to 6 ft).
 */
export const RAMP_FEET: Readonly<Record<Exclude<Ground, 'green' | 'fringe'>, number>> = {
  out: 1,
  trees: 1,
  scrub: 0.5,
  rough: 1.2,
  heavy: 0.6,
  'first-cut': 2.8,
  path: 12,
  fairway: 5,
  'penalty-red': 1,
  'penalty-yellow': 1,
  bunker: 0.4,
  tee: 6,
}
/** The fringe as a share of the green's speed. Our assumption. */
export const FRINGE_RAMP_SHARE = 0.7

/** Share of its rolling energy that a ball keeps which lands here instead of on the green. Common practice in order, sizes ours. */
export const LANDING_KEEPS: Readonly<Record<Ground, number>> = {
  out: 0.2,
  trees: 0.2,
  scrub: 0.05,
  rough: 0.25,
  heavy: 0.1,
  'first-cut': 0.55,
  path: 1.3,
  fairway: 0.85,
  'penalty-red': 0,
  'penalty-yellow': 0,
  bunker: 0.02,
  fringe: 0.92,
  green: 1,
  tee: 0.85,
}
/** Power of the day's firmness in that energy: soft greens hold. Our assumption, the bounce being a lesser part of a chip. */
export const FIRMNESS_POWER = 0.3

/** Slowing by ground in m/s² and what a landing keeps, on a day of this green speed and firmness. */
export function groundNumbers(day: {
  readonly greenSpeedFeet: number
  readonly firmness: number
}): Pick<ShortScene, 'slowing' | 'landing'> {
  const feet = { ...RAMP_FEET, green: day.greenSpeedFeet, fringe: FRINGE_RAMP_SHARE * day.greenSpeedFeet }
  const energy = day.firmness ** FIRMNESS_POWER
  return {
    slowing: byGround(feet).map(greenSlowing),
    landing: byGround(LANDING_KEEPS).map((share) => share * energy),
  }
}
