/**
 * Exact conversion factors between the SI used inside and the units of the edge.
 * Source: international yard and pound agreement of 1959 (1 yd = 0.9144 m exactly); degrees by definition.
 */
export const METRES_PER_YARD = 0.9144
export const METRES_PER_FOOT = 0.3048
export const METRES_PER_INCH = 0.0254
export const METRES_PER_SECOND_PER_MPH = 0.44704
export const METRES_PER_SECOND_PER_KNOT: number = 1852 / 3600

/** Yards → metres. */
export function yardsToMetres(yards: number): number {
  return yards * METRES_PER_YARD
}

/** Metres → yards. */
export function metresToYards(metres: number): number {
  return metres / METRES_PER_YARD
}

/** Feet → metres. */
export function feetToMetres(feet: number): number {
  return feet * METRES_PER_FOOT
}

/** Metres → feet. */
export function metresToFeet(metres: number): number {
  return metres / METRES_PER_FOOT
}

/** Degrees → radians. */
export function degreesToRadians(degrees: number): number {
  return (degrees * Math.PI) / 180
}

/** Radians → degrees. */
export function radiansToDegrees(radians: number): number {
  return (radians * 180) / Math.PI
}

/** Miles an hour → metres a second. */
export function mphToMetresPerSecond(mph: number): number {
  return mph * METRES_PER_SECOND_PER_MPH
}

/** The same direction from 0 up to 360 degrees. */
export function wholeTurn(degrees: number): number {
  const turned = degrees % 360
  return turned < 0 ? turned + 360 : turned
}
