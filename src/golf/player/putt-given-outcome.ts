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
import { puttingValues } from './putting-values.ts'

/** Expected putts before a putt, and of one struck as this one was, given how it ended. */
export interface PuttGivenOutcome {
  readonly expected: number
  /** `null` when no putt of this player ends so. */
  readonly asStruck: number | null
}

const STROKES = 256
const READINGS = 64
/** Fewer putts than this in all, of {@link STROKES}, are none. Our assumption. */
const LEAST_LIKELY = 1e-3
/** A leave is known this well, metres and as a share of it: log entries are paced. Our assumption. */
const LEAVE_SD_METRES = 0.15
const LEAVE_SD_SHARE = 0.1

/**
 * What a putt's stroke was worth given how the putt ended, on a flat green. A putt errs by its stroke (the player's own
 * spreads) and by what the stroke does not decide (reading and grass, as in the putting table). Of all strokes those are
 * taken that end so, each with its chance, and each is worth what putts struck like it cost on average. So a holed putt is
 * in part a good stroke and in part the chance that any stroke has. `leftMetres` = `null`: holed.
 */
export function puttGivenOutcome(
  putting: Putting,
  metres: number,
  leftMetres: number | null,
): PuttGivenOutcome {
  const values = puttingValues({ putting })
  let best: PuttGivenOutcome = { expected: Number.POSITIVE_INFINITY, asStruck: null }
  for (const past of PUTT_PAST_METRES) {
    let sum = 0
    let likely = 0
    let given = 0
    for (let stroke = 0; stroke < STROKES; stroke++) {
      let worth = 0
      let chance = 0
      for (let reading = 0; reading < READINGS; reading++) {
        const rest = restOf(putting, metres, past, stroke, reading)
        worth += (rest < 0 ? 1 : 1 + values.expected(rest)) / READINGS
        chance += likenessOf(rest, leftMetres) / READINGS
      }
      sum += worth / STROKES
      likely += chance
      given += chance * worth
    }
    if (sum < best.expected) best = { expected: sum, asStruck: likely > LEAST_LIKELY ? given / likely : null }
  }
  return best
}

/** Standard normal errors of strokes and of readings, direction and length. */
const STROKE_ERRORS = errors(STROKES)
const READING_ERRORS = errors(READINGS)

function errors(count: number): Float64Array {
  return lowDiscrepancyPoints(count).map((share) => normalQuantile(share))
}

const DECELERATION = greenSlowing(PUTTING_GREEN_SPEED_FEET)

/** Where one putt stops, metres from the hole; −1 when it falls. See `puttOutcomes` for the rule of capture. */
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

/** How like a rest is to what was seen. */
function likenessOf(rest: number, leftMetres: number | null): number {
  if (leftMetres === null) return rest < 0 ? 1 : 0
  if (rest < 0) return 0
  const off = (rest - leftMetres) / Math.max(LEAVE_SD_METRES, LEAVE_SD_SHARE * leftMetres)
  return Math.exp(-(off * off) / 2)
}
