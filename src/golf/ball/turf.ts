import { GRAVITY } from './flight-settings.ts'
import { ROLLING_SHARE } from './green-settings.ts'
import { greenSlowing } from './green-slowing.ts'
import { PENNER_TURF, type Turf } from './simulate-run.ts'
import {
  RESTITUTION_EXPONENT,
  ROLLING_FACTORS,
  RUN_SHARES,
  RUN_SHARES_OF_ROUGH,
  TILT_BY_HARDNESS,
} from './surface-settings.ts'

/** Ground that a ball bounces and rolls on. */
export type Surface = keyof typeof RUN_SHARES

/** What the greenkeeper says of the day: the three numbers that change how a ball bounces and rolls. */
export interface GroundToday {
  /** Multiplies the run of a drive on a fairway: soft 0.4, normal 1, firm 1.7. */
  readonly firmness: number
  /** Green speed on the standard ramp test, feet. */
  readonly greenSpeedFeet: number
  readonly rough: 'short' | 'normal' | 'long'
}

/** Normal ground: what stock distances refer to. */
export const NORMAL_GROUND: GroundToday = { firmness: 1, greenSpeedFeet: 9, rough: 'normal' }

/** Run of a drive on a surface as a share of its run on the fairway of the same day; 0 where a ball stays in its hole. */
export function runShare(surface: Surface, rough: GroundToday['rough'] = 'normal'): number {
  return surface === 'rough' ? RUN_SHARES_OF_ROUGH[rough] : RUN_SHARES[surface]
}

/**
 * The turf of a surface today. Its hardness is by definition the share that a drive's run on it has of the run on a
 * normal fairway: softer ground keeps less of the normal speed and digs a deeper crater, which leans further back. So a
 * drive loses run in proportion, and a steep spinning wedge stops or comes back. On a green the ball rolls as the ramp
 * test says. `null` for sand, where a ball stops.
 */
export function turfOf(surface: Surface, today: GroundToday): Turf | null {
  if (surface === 'bunker') return null
  const hardness = today.firmness * runShare(surface, today.rough)
  return {
    restitutionShare: hardness ** RESTITUTION_EXPONENT,
    tiltShare: tiltOf(hardness),
    rollingFriction:
      surface === 'green'
        ? greenSlowing(today.greenSpeedFeet) / (ROLLING_SHARE * GRAVITY)
        : PENNER_TURF.rollingFriction * ROLLING_FACTORS[surface],
  }
}

/** Linear between the knots, level beyond their ends. */
function tiltOf(hardness: number): number {
  const knots = TILT_BY_HARDNESS
  const above = knots.findIndex(([at]) => at >= hardness)
  const [highAt, high] = knots[above < 0 ? knots.length - 1 : above] as readonly [number, number]
  const [lowAt, low] = knots[above < 0 ? knots.length - 1 : Math.max(0, above - 1)] as readonly [
    number,
    number,
  ]
  return highAt === lowAt ? high : low + ((high - low) * (hardness - lowAt)) / (highAt - lowAt)
}
