import { degreesToRadians } from '#numbers/units/units.ts'
import { GRASS_ROUGHNESS, LEAST_WIND_HEIGHT_METRES, WIND_HEIGHT_METRES } from './flight-settings.ts'

/** What the air and the ground's rise are at one hole, in the hole frame. */
export interface Conditions {
  /** Wind at 10 m in m/s *towards* +x and +y of the hole frame. */
  readonly windX: number
  readonly windY: number
  /** Wind at a height as a share of the wind at 10 m. */
  readonly windShare: (heightMetres: number) => number
  /** kg/m³. */
  readonly density: number
  /** Steady rise of the ground, metres per metre, towards {@link riseHeading}. */
  readonly risePerMetre: number
  /** Radians clockwise from the y axis. */
  readonly riseHeading: number
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
 * Wind over short grass at a height, as a share of the wind at 10 m: logarithmic, the usual profile of neutral air over
 * open ground (from memory: roughness length 0.03 m).
 */
export function windShareOverGrass(heightMetres: number): number {
  const height = Math.max(heightMetres, LEAST_WIND_HEIGHT_METRES)
  return Math.log(height / GRASS_ROUGHNESS) / Math.log(WIND_HEIGHT_METRES / GRASS_ROUGHNESS)
}
