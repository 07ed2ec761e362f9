import { type Conditions, windInFrame } from '#golf/ball/conditions.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'

/** The conditions of a day at one hole; the ground rises steadily from the markers to the pin. */
export function holeConditions(hole: Hole, day: Day): Conditions {
  const [pinX, pinY] = hole.pin
  const straight = Math.hypot(pinX, pinY)
  return {
    ...windInFrame(day.wind, hole.bearingDegrees),
    temperatureCelsius: day.temperatureCelsius,
    altitudeMetres: day.altitudeMetres,
    risePerMetre: straight > 0 ? hole.riseMetres / straight : 0,
    riseHeading: Math.atan2(pinX, pinY),
  }
}
