/** Specific gas constants of dry air and of water vapour, J/(kg K). */
const DRY_AIR = 287.05
const WATER_VAPOUR = 461.495
const ZERO_CELSIUS = 273.15

/** Pressure of the standard atmosphere at an altitude in metres, Pa. Source: ICAO standard atmosphere (Doc 7488), troposphere. */
export function standardPressure(altitudeMetres: number): number {
  const share = (288.15 - 0.0065 * altitudeMetres) / 288.15
  return 101_325 * share ** 5.25588
}

/**
 * Density of moist air, kg/m³. Vapour pressure by Arden Buck's equation (1981, enhanced form of 1996); ideal gases.
 * `humidity` is a share 0–1 of saturation.
 */
export function airDensity(temperatureCelsius: number, pressurePascal: number, humidity: number): number {
  const t = temperatureCelsius
  const vapour = humidity * 611.21 * Math.exp(((18.678 - t / 234.5) * t) / (257.14 + t))
  const kelvin = t + ZERO_CELSIUS
  return (pressurePascal - vapour) / (DRY_AIR * kelvin) + vapour / (WATER_VAPOUR * kelvin)
}
