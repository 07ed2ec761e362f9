import type { Player } from '../player.ts'
import { puttingValues } from '../putting-values.ts'
import { shortGameValue } from '../short-game-values.ts'
import type { Leave, StationResult } from '../test-day-results.ts'
import { SHORT_BALL_SD, SHORT_PRIOR_SD } from './test-day-settings.ts'

/** Strokes lost around the green as a test leaves them: normal, mean and sd in strokes; `balls` played. */
export interface StrokesLost {
  readonly mean: number
  readonly sd: number
  readonly balls: number
}

/**
 * The posterior of the strokes lost on a chip from 20 m of fairway: normal prior about what was assumed, and one
 * observation a ball. A ball costs the stroke and the putts expected from where it stopped; `shortGameValue` is linear in
 * the strokes lost, so each ball is an observation of them, the surer the more its lie and distance multiply them. What
 * one ball costs varies with a pooled variance. Conjugate normal, closed form (Gelman et al., Bayesian Data Analysis,
 * 3rd ed., section 2.5).
 */
export function fitShortTest(player: Player, results: readonly StationResult[]): StrokesLost {
  const stations = results
    .filter(({ station, balls }) => station.kind === 'short' && balls > 0)
    .map((result) => {
      const { station } = result
      const without = strokesFrom(player, 0, station.lie, station.metres)
      const factor = strokesFrom(player, 1, station.lie, station.metres) - without
      const costs = costsOf(player, result)
      const mean = costs.reduce((sum, cost) => sum + cost, 0) / costs.length
      const squares = costs.reduce((sum, cost) => sum + (cost - mean) ** 2, 0)
      return { factor, lost: mean - without, balls: costs.length, squares }
    })
  const before = player.shortGame.strokesLost
  const priorSd = Math.hypot(SHORT_PRIOR_SD.share * before, SHORT_PRIOR_SD.strokes)
  const spare = stations.reduce((sum, { balls }) => sum + balls - 1, 0)
  const squares = stations.reduce((sum, one) => sum + one.squares, 0)
  const variance =
    (SHORT_BALL_SD.strokes ** 2 * SHORT_BALL_SD.balls + squares) / (SHORT_BALL_SD.balls + spare)
  let precision = 1 / priorSd ** 2
  let weighted = before / priorSd ** 2
  for (const { factor, lost, balls } of stations) {
    precision += (balls * factor ** 2) / variance
    weighted += (balls * factor * lost) / variance
  }
  return {
    mean: weighted / precision,
    sd: Math.sqrt(1 / precision),
    balls: stations.reduce((sum, { balls }) => sum + balls, 0),
  }
}

/** What each ball of a station cost: the stroke, and what is expected from where it stopped. */
export function costsOf(player: Player, { holed, leaves }: StationResult): number[] {
  const { expected } = puttingValues(player)
  const after = ({ metres, isOffGreen }: Leave): number =>
    isOffGreen ? shortGameValue(player, 'rough', metres) : expected(metres)
  return [...new Array<number>(holed).fill(1), ...leaves.map((leave) => 1 + after(leave))]
}

function strokesFrom(
  player: Player,
  strokesLost: number,
  lie: Parameters<typeof shortGameValue>[1],
  metres: number,
): number {
  const { putting, shortGame } = player
  return shortGameValue({ putting, shortGame: { ...shortGame, strokesLost } }, lie, metres)
}
