import { airDensity, standardPressure } from '#golf/ball/air.ts'
import { type Conditions, windInFrame, windShareOverGrass } from '#golf/ball/conditions.ts'
import { REFERENCE_DENSITY, USUAL_HUMIDITY } from '#golf/ball/flight-settings.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'

/** The conditions of a day at one hole; the ground rises steadily from the markers to the pin. */
export function holeConditions(hole: Hole, day: Day): Conditions {
  const [pinX, pinY] = hole.pin
  const straight = Math.hypot(pinX, pinY)
  return {
    ...windInFrame(day.wind, hole.bearingDegrees),
    windShare: windShareOverGrass,
    density: densityOf(day),
    risePerMetre: straight > 0 ? hole.riseMetres / straight : 0,
    riseHeading: Math.atan2(pinX, pinY),
  }
}

/** Density of a day's air, kg/m³, against the same humidity at reference, so that the reference day changes nothing. */
function densityOf(day: Day): number {
  const pressure =
    day.pressureHectopascal === null ? standardPressure(day.altitudeMetres) : 100 * day.pressureHectopascal
  const reference = airDensity(15, standardPressure(0), USUAL_HUMIDITY)
  return (REFERENCE_DENSITY * airDensity(day.temperatureCelsius, pressure, USUAL_HUMIDITY)) / reference
}
