import type { Putting } from './player.ts'
import { struckPutts } from './struck-putts.ts'

/** Expected putts before a putt, and of one struck as this one was, given how it ended. */
export interface PuttGivenOutcome {
  readonly expected: number
  /** `null` when no putt of this player ends so. */
  readonly asStruck: number | null
}

/** Fewer putts than this share of all are none. Our assumption. */
const LEAST_LIKELY = 4e-6
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
  const { expected, strokes, readings, worth, rest } = struckPutts(putting, metres)
  let likely = 0
  let given = 0
  for (let stroke = 0; stroke < strokes; stroke++) {
    let chance = 0
    for (let reading = 0; reading < readings; reading++)
      chance += likenessOf(rest[stroke * readings + reading] as number, leftMetres)
    likely += chance
    given += chance * (worth[stroke] as number)
  }
  return { expected, asStruck: likely / (strokes * readings) > LEAST_LIKELY ? given / likely : null }
}

/** How like a rest is to what was seen. */
function likenessOf(rest: number, leftMetres: number | null): number {
  if (leftMetres === null) return rest < 0 ? 1 : 0
  if (rest < 0) return 0
  const off = (rest - leftMetres) / Math.max(LEAVE_SD_METRES, LEAVE_SD_SHARE * leftMetres)
  return Math.exp(-(off * off) / 2)
}
