import { FASTEST_RUN_LANDING, LEAST_MEETING_ANGLE } from './flight-settings.ts'
import type { Landing } from './simulate-flight.ts'
import { PENNER_TURF, simulateRun, type Turf } from './simulate-run.ts'

/**
 * Bounce and roll, metres, of a ball that comes down on ground that rises by `grade` metres a metre along its way: what
 * counts is how steeply the ball meets the ground. Negative when it comes back.
 */
export function runOfLanding(
  landing: Pick<Landing, 'speed' | 'angle' | 'spinRpm'>,
  grade: number,
  turf: Turf = PENNER_TURF,
): number {
  const slope = Math.atan(grade)
  const touchdown = {
    speed: Math.min(landing.speed, FASTEST_RUN_LANDING),
    angle: Math.max(LEAST_MEETING_ANGLE, landing.angle + slope),
    spinRpm: landing.spinRpm,
  }
  const { bounce, roll } = simulateRun(touchdown, slope, turf)
  return bounce + roll
}
