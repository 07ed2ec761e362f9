import { logOdds, shareOfLogOdds } from '#numbers/statistics/log-odds.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { drawPlayer } from './draw-player.ts'
import type { Club, Player } from './player.ts'

/** A number, and between which values it lies for eight in ten of the players that this one may be. */
export interface SureNumber {
  readonly value: number
  readonly low: number
  readonly high: number
  /** The same after ten measured shots with the club, if they came out as expected. */
  readonly then: { readonly low: number; readonly high: number }
  readonly isGuess: boolean
}

/** What is known of a club: carry and sideways spread of good strikes at that carry, metres, and the share of mishits. */
export interface SureClub {
  readonly name: string
  readonly carryMetres: SureNumber
  readonly spreadMetres: SureNumber
  readonly mishitShare: SureNumber
}

const SHOTS = 10
/** Draws behind the intervals, and the tail left out on each side. */
const DRAWS = 400
const TAIL = 0.1
/** Standard deviations between middle and end of such an interval. */
const REACH = normalQuantile(1 - TAIL)

/**
 * How sure each club of a player is, from the draws that plans reckon with, and how sure ten measured shots with it
 * would make it: a normal prior of the drawn width meets the information of those shots, 2n of a spread's logarithm,
 * n/share² of a mean carry's, n·p·(1 − p) of log odds. What other clubs' shots tell is left out.
 */
export function howSure(player: Player): readonly SureClub[] {
  const draws = Array.from({ length: DRAWS }, (_, seed) => drawPlayer(player, seed + 1))
  return player.clubs.map((club, index) => {
    const drawn = draws.map((draw) => draw.clubs[index] ?? club)
    const isGuess = (number: string): boolean => player.guesses.has(`clubs.${club.name}.${number}`)
    const good = SHOTS * (1 - club.mishitShare)
    const sure = (of: (one: Club) => number, scale: Scale, information: number, number: string): SureNumber =>
      sureNumber(of(club), drawn.map(of), scale, information, isGuess(number))
    return {
      name: club.name,
      carryMetres: sure((one) => one.carryMetres, LOGARITHM, good / club.carrySdShare ** 2, 'carry_m'),
      // The club's own carry: a doubtful length is told beside it and not twice.
      spreadMetres: sure(
        (one) => club.carryMetres * Math.tan(degreesToRadians(one.directionSdDegrees)),
        LOGARITHM,
        2 * good,
        'direction_sd_deg',
      ),
      mishitShare: sure((one) => one.mishitShare, LOG_ODDS, good * club.mishitShare, 'mishit_share'),
    }
  })
}

/** The scale on which a number's doubt is even to both sides. */
interface Scale {
  readonly to: (value: number) => number
  readonly from: (value: number) => number
}
const LOGARITHM: Scale = { to: Math.log, from: Math.exp }
const LOG_ODDS: Scale = { to: logOdds, from: shareOfLogOdds }

function sureNumber(
  value: number,
  drawn: readonly number[],
  scale: Scale,
  information: number,
  isGuess: boolean,
): SureNumber {
  const weights = drawn.map(() => 1)
  const low = weightedQuantile(drawn, weights, TAIL)
  const high = weightedQuantile(drawn, weights, 1 - TAIL)
  const middle = (scale.to(low) + scale.to(high)) / 2
  const sd = (scale.to(high) - scale.to(low)) / 2 / REACH
  // A share of nothing has no odds: it stays what it is.
  const reach = Number.isFinite(sd) ? (REACH * sd) / Math.sqrt(1 + sd ** 2 * information) : 0
  const then =
    reach === 0 ? { low, high } : { low: scale.from(middle - reach), high: scale.from(middle + reach) }
  return { value, low, high, then, isGuess }
}
