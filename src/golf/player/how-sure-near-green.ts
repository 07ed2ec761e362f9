import { logOdds, shareOfLogOdds } from '#numbers/statistics/log-odds.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { drawPlayer } from './draw-player.ts'
import type { SureNumber } from './how-sure.ts'
import type { Player } from './player.ts'
import { puttingValues } from './putting-values.ts'
import { shortGameShares } from './short-game-shares.ts'

/** A number and the range in which it lies for eight in ten of the players that this one may be. */
type Range = Pick<SureNumber, 'value' | 'low' | 'high'>

/** What is known of a player near the green, in what can be counted there. */
export interface SureNearGreen {
  /** Share of chips from 20 m of fairway that are holed in two. */
  readonly upAndDownShare: Range
  /** Metres from which every second putt is holed on a flat green. */
  readonly halfHoledMetres: Range
}

const DRAWS = 400
/** Standard deviations from the middle to the ends that eight in ten lie between. */
const REACH = normalQuantile(0.9)

/**
 * How sure a player's short game and putting are, from the draws that plans reckon with. Those draw three levels with a
 * normal's mean and variance, so the range is a normal's too: of the share's log odds, of the length's logarithm.
 */
export function howSureNearGreen(player: Player): SureNearGreen {
  const draws = Array.from({ length: DRAWS }, (_, seed) => drawPlayer(player, seed + 1))
  const range = (
    of: (one: Player) => number,
    to: (value: number) => number,
    from: (value: number) => number,
  ): Range => {
    const drawn = draws.map((draw) => to(of(draw)))
    const mean = drawn.reduce((sum, one) => sum + one, 0) / DRAWS
    const sd = Math.sqrt(drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (DRAWS - 1))
    return { value: of(player), low: from(mean - REACH * sd), high: from(mean + REACH * sd) }
  }
  return {
    upAndDownShare: range(upAndDownShare, logOdds, shareOfLogOdds),
    halfHoledMetres: range(halfHoledMetres, Math.log, Math.exp),
  }
}

function upAndDownShare(player: Player): number {
  const shares = shortGameShares(player, 'fairway', 20)
  return (shares[0] ?? 0) + (shares[1] ?? 0)
}

/** Bisection: the chance of one putt falls with distance. */
function halfHoledMetres(player: Player): number {
  const { shares } = puttingValues(player)
  let [near, far] = [0.2, 6]
  for (let step = 0; step < 24; step += 1) {
    const middle = (near + far) / 2
    if (shares(middle)[0] > 0.5) near = middle
    else far = middle
  }
  return near
}
