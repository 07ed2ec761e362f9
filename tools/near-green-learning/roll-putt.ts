import { type Slopes, simulateRoll } from '#golf/ball/simulate-roll.ts'
import { solvePuttStart } from '#golf/ball/solve-putt-start.ts'
import {
  READING_BREAK_SHARE,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
} from '#golf/player/near-green-settings.ts'
import type { Putting } from '#golf/player/player.ts'
import { cheapestPace } from '#golf/player/struck-putts.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { degreesToRadians } from '#numbers/units/units.ts'

/** A green to putt on. */
export interface StudyGreen {
  readonly slopes: Slopes
  readonly pin: Point
  readonly slowing: number
}

/** Paces are chosen for lengths so far apart, metres. */
const PACE_STEP_METRES = 0.25

/**
 * One putter's putts, each ball rolled over the green's slopes until it falls or stops: from a place to where it stops, `null` =
 * holed. Meant to go over the middle of the hole at the pace that the putter finds best, struck with the errors of the
 * stroke and of reading.
 */
export function roller(
  { slopes, pin, slowing }: StudyGreen,
  putting: Putting,
  normal: () => number,
): (from: Point) => Point | null {
  const paces = new Map<number, number>()
  const paceFor = (metres: number): number => {
    const step = Math.max(1, Math.round(metres / PACE_STEP_METRES))
    const known = paces.get(step) ?? cheapestPace(putting, step * PACE_STEP_METRES)
    paces.set(step, known)
    return known
  }
  return (from) => {
    const away = distance(from, pin)
    const past = paceFor(away)
    const speedAtHole = Math.sqrt(2 * slowing * past)
    const straight = Math.atan2(pin[0] - from[0], pin[1] - from[1])
    const start = solvePuttStart({ from, hole: pin, slopes, slowing, speedAtHole })
    const heading = start?.headingRadians ?? straight
    const playing = (start?.speed ?? Math.sqrt(2 * slowing * (away + past))) ** 2 / (2 * slowing)
    const obeys = (away + past) / playing
    const paceSd = Math.hypot(putting.distanceSdShare, READING_DISTANCE_SD_SHARE * obeys)
    const lineSd = Math.hypot(
      degreesToRadians(Math.hypot(putting.directionSdDegrees, READING_DIRECTION_SD_DEGREES * obeys)),
      READING_BREAK_SHARE * (heading - straight),
    )
    const rolls = Math.max(1e-3, playing * (1 + paceSd * normal()))
    const roll = simulateRoll(
      {
        x: from[0],
        y: from[1],
        headingRadians: heading + lineSd * normal(),
        speed: Math.sqrt(2 * slowing * rolls),
      },
      slopes,
      slowing,
      pin,
    )
    return roll.isHoled ? null : [roll.x, roll.y]
  }
}
