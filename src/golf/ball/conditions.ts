import { degreesToRadians } from '#numbers/units/units.ts'
import {
  CARRY_GAINED_PER_TAIL_WIND,
  CARRY_LOST_PER_HEAD_WIND,
  CARRY_PER_ALTITUDE_METRE,
  CARRY_PER_DEGREE,
  CARRY_PER_METRE_OF_RISE,
  DRIFT_PER_CROSS_WIND,
  LEAST_CARRY_SHARE,
} from './settings.ts'

/** What the air and the ground's rise are at one hole, in the hole frame. */
export interface Conditions {
  /** Wind in m/s *towards* +x and +y of the hole frame. */
  readonly windX: number
  readonly windY: number
  readonly temperatureCelsius: number
  readonly altitudeMetres: number
  /** Steady rise of the ground, metres per metre, towards {@link riseHeading}. */
  readonly risePerMetre: number
  /** Radians clockwise from the y axis. */
  readonly riseHeading: number
}

/** What conditions do to shots along one heading. */
export interface FlightChange {
  /** Multiplies carry. */
  readonly carryShare: number
  /** Sideways metres per metre of stock carry, to the right of the heading positive. */
  readonly driftShare: number
}

/** Wind of a day, given from a true bearing, in the frame of a hole whose y axis bears `bearingDegrees`. */
export function windInFrame(
  wind: { readonly speedMetresPerSecond: number; readonly fromDegrees: number },
  bearingDegrees: number,
): { readonly windX: number; readonly windY: number } {
  const toward = degreesToRadians(wind.fromDegrees + 180 - bearingDegrees)
  return {
    windX: wind.speedMetresPerSecond * Math.sin(toward),
    windY: wind.speedMetresPerSecond * Math.cos(toward),
  }
}

/**
 * Change of carry and drift along a heading (radians clockwise from the y axis) by the rules of thumb of
 * `settings.ts`: into the wind costs twice what behind gives, a metre of rise costs a metre of carry.
 */
export function flightChange(conditions: Conditions, heading: number): FlightChange {
  const sin = Math.sin(heading)
  const cos = Math.cos(heading)
  const behind = conditions.windX * sin + conditions.windY * cos
  const toRight = conditions.windX * cos - conditions.windY * sin
  const windShare = behind >= 0 ? behind * CARRY_GAINED_PER_TAIL_WIND : behind * CARRY_LOST_PER_HEAD_WIND
  const airShare =
    (conditions.temperatureCelsius - 15) * CARRY_PER_DEGREE +
    conditions.altitudeMetres * CARRY_PER_ALTITUDE_METRE
  const rise = conditions.risePerMetre * Math.cos(heading - conditions.riseHeading)
  const carryShare = (1 + windShare + airShare) / Math.max(1 + rise * CARRY_PER_METRE_OF_RISE, 0.5)
  return { carryShare: Math.max(carryShare, LEAST_CARRY_SHARE), driftShare: toRight * DRIFT_PER_CROSS_WIND }
}
