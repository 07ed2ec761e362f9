import { HOLE_RADIUS_METRES, PUTT_ROUNDS, PUTT_TOLERANCE_METRES } from './green-settings.ts'
import { type RollStep, rollBack, type Slopes } from './simulate-roll.ts'

/** How a ball must begin to roll to go over the middle of the hole: radians clockwise from the y axis, m/s. */
export interface PuttStart {
  readonly headingRadians: number
  readonly speed: number
  /** Direction of travel at the hole, radians clockwise from the y axis. */
  readonly arrivalRadians: number
}

export interface PuttStartQuestion {
  readonly from: readonly [x: number, y: number]
  readonly hole: readonly [x: number, y: number]
  readonly slopes: Slopes
  /** Of a level green, m/s². */
  readonly slowing: number
  /** Speed over the middle of the hole, m/s, above 0. */
  readonly speedAtHole: number
  /** Direction of travel at the hole to begin with; straight from the ball when left out. */
  readonly arrivalRadians?: number
  readonly step?: RollStep
  readonly toleranceMetres?: number
}

/**
 * The one start of a putt that goes over the middle of the hole at a given speed, by rolling the ball back from the hole
 * and turning its arrival until it comes by the place it lies at; secants from the straight line. `null` when there is
 * none: so slow a ball never comes down from where none can stop, or the ground sends every such ball elsewhere.
 */
export function solvePuttStart(question: PuttStartQuestion): PuttStart | null {
  const { from, hole, slopes, slowing, speedAtHole, step } = question
  const tolerance = question.toleranceMetres ?? PUTT_TOLERANCE_METRES
  const [x, y] = hole
  const straight = Math.atan2(x - from[0], y - from[1])
  const distance = Math.hypot(x - from[0], y - from[1])
  if (distance < HOLE_RADIUS_METRES) return null
  let arrival = question.arrivalRadians ?? straight
  let gain = distance
  let before: { readonly arrival: number; readonly offset: number } | null = null
  /** Arrivals that bring the ball by on the left and on the right of where it lies. */
  let left = Number.NEGATIVE_INFINITY
  let right = Number.POSITIVE_INFINITY
  for (let round = 0; round < PUTT_ROUNDS; round += 1) {
    const end = { x, y, headingRadians: arrival + Math.PI, speed: speedAtHole }
    const pass = rollBack(end, slopes, slowing, from, step)
    if (pass === null) {
      if (before === null) return null
      arrival = (arrival + before.arrival) / 2
      continue
    }
    const offset = pass.offsetMetres
    if (Math.abs(offset) < tolerance)
      return {
        headingRadians: straight + lessTurns(pass.headingRadians + Math.PI - straight),
        speed: pass.speed,
        arrivalRadians: arrival,
      }
    if (offset < 0) left = Math.max(left, arrival)
    else right = Math.min(right, arrival)
    if (before !== null) {
      const slope = (offset - before.offset) / (arrival - before.arrival)
      if (Number.isFinite(slope) && slope > 0) gain = slope
    }
    before = { arrival, offset }
    arrival -= Math.max(-MOST_TURN, Math.min(MOST_TURN, offset / gain))
    // Near ground too steep to stop on, all arrivals but a few come from far away: then halving finds what secants miss.
    if (
      left < right &&
      (arrival <= left || arrival >= right || round > PUTT_ROUNDS / 3) &&
      right - left < Math.PI
    )
      arrival = (left + right) / 2
  }
  return null
}

/** Largest turn of the arrival in a round, radians: further off, a secant is no guide. */
const MOST_TURN: number = Math.PI / 8

/** The same angle between −π and π. */
function lessTurns(radians: number): number {
  return radians - 2 * Math.PI * Math.round(radians / (2 * Math.PI))
}
