import { CAPTURE_SPEED_METRES_PER_SECOND } from '#golf/ball/green-settings.ts'
import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { captureWidth } from '#golf/ball/hole-pass.ts'
import { lowDiscrepancyPoints } from '#numbers/statistics/low-discrepancy.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import {
  PUTT_PAST_METRES,
  PUTTING_GREEN_SPEED_FEET,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
} from './near-green-settings.ts'
import type { Putting } from './player.ts'
import { puttOutcomes } from './putt-outcomes.ts'
import { puttingValues, withReading } from './putting-values.ts'

/** A putt struck in many ways, each with what the stroke does not decide: reading and grass. All are equally likely. */
export interface StruckPutts {
  /** Expected putts, this one counted. */
  readonly expected: number
  readonly strokes: number
  readonly readings: number
  /** Expected putts of each stroke over its readings. */
  readonly worth: Float64Array
  /** Where each reading of each stroke stops, metres from the hole, −1 when it falls: readings of the first stroke first. */
  readonly rest: Float64Array
}

const STROKES = 256
const READINGS = 64

/** Strikes a putt of this length on a flat green at the pace that costs least; see `puttOutcomes` for the rule of capture. */
export function struckPutts(putting: Putting, metres: number): StruckPutts {
  return strike(putting, metres, cheapestPace(putting, metres))
}

/** How far past the hole a player like this one means a putt of this length to roll, with the fewest putts expected, metres. */
export function cheapestPace(putting: Putting, metres: number): number {
  const { expected } = puttingValues({ putting })
  const whole = withReading(putting)
  const costs = PUTT_PAST_METRES.map((past) => {
    const { weight, restMetres } = puttOutcomes(whole, metres, past)
    return weight.reduce((sum, chance, index) => sum + chance * expected(restMetres[index] as number), 0)
  })
  return PUTT_PAST_METRES[costs.indexOf(Math.min(...costs))] as number
}

function strike(putting: Putting, metres: number, past: number): StruckPutts {
  const [strokes, readings] = [STROKES, READINGS]
  const values = puttingValues({ putting })
  const worth = new Float64Array(strokes)
  const rest = new Float64Array(strokes * readings)
  let expected = 0
  for (let stroke = 0; stroke < strokes; stroke++) {
    let sum = 0
    for (let reading = 0; reading < readings; reading++) {
      const stops = restOf(putting, metres, past, stroke, reading)
      rest[stroke * readings + reading] = stops
      sum += stops < 0 ? 1 : 1 + values.expected(stops)
    }
    worth[stroke] = sum / readings
    expected += sum / readings / strokes
  }
  return { expected, strokes, readings, worth, rest }
}

/** Standard normal errors of strokes and of readings, direction and length. */
const STROKE_ERRORS = errors(STROKES)
const READING_ERRORS = errors(READINGS)

function errors(count: number): Float64Array {
  return lowDiscrepancyPoints(count).map((share) => normalQuantile(share))
}

const DECELERATION = greenSlowing(PUTTING_GREEN_SPEED_FEET)

function restOf(putting: Putting, metres: number, past: number, stroke: number, reading: number): number {
  const off = degreesToRadians(
    putting.directionSdDegrees * (STROKE_ERRORS[2 * stroke] as number) +
      READING_DIRECTION_SD_DEGREES * (READING_ERRORS[2 * reading] as number),
  )
  const share =
    putting.distanceSdShare * (STROKE_ERRORS[2 * stroke + 1] as number) +
    READING_DISTANCE_SD_SHARE * (READING_ERRORS[2 * reading + 1] as number)
  const rolls = Math.max(0, (metres + past) * (1 + share))
  const speed = Math.sqrt(2 * DECELERATION * Math.max(0, rolls - metres))
  const isHoled =
    rolls >= metres &&
    speed <= CAPTURE_SPEED_METRES_PER_SECOND &&
    Math.abs(metres * Math.sin(off)) <= captureWidth(speed)
  return isHoled ? -1 : Math.hypot(rolls * Math.cos(off) - metres, rolls * Math.sin(off))
}
