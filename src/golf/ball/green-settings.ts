import { METRES_PER_INCH } from '#numbers/units/units.ts'

/** Radius of the hole, metres. Published: Rules of Golf, diameter 4¼ in. */
export const HOLE_RADIUS_METRES: number = (4.25 / 2) * METRES_PER_INCH
/** Fastest ball the hole takes dead centre, m/s. Published: Holmes 1991. Off centre it falls with 1 − (offset/radius)² (Penner 2002, from memory). */
export const CAPTURE_SPEED_METRES_PER_SECOND = 1.63
/** Speed at which the standard ramp lets a ball go, m/s (published: 6.00 ft/s). */
export const RAMP_SPEED_METRES_PER_SECOND = 1.83
/** Share of gravity along a slope that a rolling solid ball feels; the rest turns it. Textbook mechanics: 1/(1 + 2/5). */
export const ROLLING_SHARE: number = 5 / 7

/** Longest step of a roll, seconds, and largest change of speed in a step as a share of the speed; halving both moves a ball by under 1 mm (test). */
export const ROLL_STEP_SECONDS = 0.1
export const ROLL_STEP_SHARE = 0.2
/** A ball that can stop is at rest when so little way is left to it, metres. */
export const REST_METRES = 1e-4
/** Slower than this, m/s, a ball that climbs where no ball can stop is taken to turn back. */
export const TURNING_SPEED = 1e-3
/**
 * Ends of a roll that does not stop by itself, metres of path and seconds: three times the length of a large green, and
 * longer than any putt takes. Our assumption.
 */
export const LONGEST_ROLL_METRES = 120
export const LONGEST_ROLL_SECONDS = 60

/** A putt's start is settled when its roll back comes by the ball so near, metres, in at most so many rounds. */
export const PUTT_TOLERANCE_METRES = 1e-7
export const PUTT_ROUNDS = 24
/** Steps of rolls that fill tables: 1 mm off at the hole, and a putt's rest 0.02 % of its length, on planes and on bumps 10 m across (test). */
export const TABLE_ROLL_STEP: { readonly seconds: number; readonly share: number } = {
  seconds: 0.4,
  share: 0.5,
}
export const TABLE_PUTT_TOLERANCE_METRES = 1e-3
