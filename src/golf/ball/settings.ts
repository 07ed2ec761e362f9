import { METRES_PER_FOOT, METRES_PER_SECOND_PER_MPH } from '#numbers/units/units.ts'

/**
 * The simple rules of wind, height, air and run that stand until the flight model does. Each is the trade's rule of
 * thumb; only changes are used, never absolute carries.
 */

/** Share of carry lost per m/s of wind into: 1 % a mile an hour. Common practice. */
export const CARRY_LOST_PER_HEAD_WIND: number = 0.01 / METRES_PER_SECOND_PER_MPH
/** Share of carry gained per m/s of wind behind: half of what the same wind takes. Common practice. */
export const CARRY_GAINED_PER_TAIL_WIND: number = 0.005 / METRES_PER_SECOND_PER_MPH
/** Drift as a share of carry per m/s of wind across: about 10 yards on 150 yards in 10 mph. Common practice. */
export const DRIFT_PER_CROSS_WIND = 0.015
/** Share of carry per degree Celsius away from 15: about 2 yards on 200 for 5 °C. Common practice. */
export const CARRY_PER_DEGREE = 0.002
/** Share of carry gained per metre of altitude: 1.2 % a thousand feet. Common practice. */
export const CARRY_PER_ALTITUDE_METRE: number = 0.012 / (1000 * METRES_PER_FOOT)
/** Metres of carry lost per metre that the landing lies higher: a yard a yard. Common practice. */
export const CARRY_PER_METRE_OF_RISE = 1
/** Least share of its stock carry that any condition leaves a shot: a guard against rules of thumb far outside their range. Our assumption. */
export const LEAST_CARRY_SHARE = 0.3

/**
 * Run on each ground as a share of the run on a level fairway. The order fairway > first cut > rough > heavy is
 * common practice, the figures are our assumption.
 */
export const RUN_SHARES = {
  tee: 1,
  fairway: 1,
  path: 1,
  fringe: 0.8,
  'first-cut': 0.7,
  green: 0.6,
  rough: 0.35,
  trees: 0.3,
  heavy: 0.15,
  scrub: 0.1,
  bunker: 0,
} as const
