import { degreesToRadians } from '#numbers/units/units.ts'
import type { Player } from './player.ts'
import {
  STANCE_DIRECTION_PER_DEGREE,
  STANCE_DISTANCE_PER_DEGREE,
  STANCE_MISHIT_PER_DEGREE,
  STANCE_PULL_PER_DEGREE,
  STEEP_STANCE_DEGREES,
} from './stance-settings.ts'

/** Slopes under the feet, degrees. */
export interface Stance {
  /** Along the start line: uphill positive, downhill negative. */
  readonly uphillDegrees: number
  /** Across it: ball above the feet positive, below them negative. */
  readonly aboveDegrees: number
}

/** What a stance does to a shot. */
export interface StanceEffect {
  /** Turns the start, radians, right positive. */
  readonly turn: number
  /** Adds to the launch, radians. */
  readonly launch: number
  /** Multiply direction spread, spread of carry and mishit share. */
  readonly direction: number
  readonly distance: number
  readonly mishit: number
  /** False for a club that is not used from slopes like these. */
  readonly allowed: boolean
}

/** A level stance changes nothing. */
export const LEVEL_STANCE: StanceEffect = {
  turn: 0,
  launch: 0,
  direction: 1,
  distance: 1,
  mishit: 1,
  allowed: true,
}

/**
 * What slopes under the feet do to a club. A ball above the feet turns the start by atan(tan loft · sin slope) to the
 * left of a right-hander, below the feet to the right, more with more loft (geometry of a still face); a left-hander's is
 * the mirror image. Uphill adds its own angle to the launch, downhill takes it off (common practice), with ball speed
 * and spin unchanged; uphill shots tend to the left of a right-hander, downhill to the right (Hiley et al., Sports
 * Biomechanics 2019, twelve players, 5°: the tendency; its size is our assumption). Spreads grow with both slopes.
 */
export function stanceEffect(stance: Stance, loftDegrees: number, hand: Player['hand']): StanceEffect {
  const { uphillDegrees, aboveDegrees } = stance
  const toRight = hand === 'right' ? 1 : -1
  const loft = Math.tan(degreesToRadians(loftDegrees))
  const fromFace = Math.atan(loft * Math.sin(degreesToRadians(aboveDegrees)))
  const pull = degreesToRadians(STANCE_PULL_PER_DEGREE * uphillDegrees)
  const steepness = Math.hypot(uphillDegrees, aboveDegrees)
  return {
    turn: -toRight * (fromFace + pull),
    launch: degreesToRadians(uphillDegrees),
    direction: 1 + STANCE_DIRECTION_PER_DEGREE * steepness,
    distance: 1 + STANCE_DISTANCE_PER_DEGREE * steepness,
    mishit: 1 + STANCE_MISHIT_PER_DEGREE * steepness,
    allowed: steepness < STEEP_STANCE_DEGREES || loftDegrees >= LEAST_LOFT_WHEN_STEEP,
  }
}

/** Woods and long irons stay in the bag on steep slopes (common practice), degrees of loft. */
const LEAST_LOFT_WHEN_STEEP = 26
