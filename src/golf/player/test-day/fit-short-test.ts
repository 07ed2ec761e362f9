import { SHORT_PRIOR_SD, TEST_BALL_TELLS } from '../near-green-settings.ts'
import type { Lie, Player } from '../player.ts'
import { puttingValues } from '../putting-values.ts'
import { shortGameValue } from '../short-game-values.ts'
import type { Leave, StationResult } from '../test-day-results.ts'
import { SHORT_BALL_SD } from './test-day-settings.ts'

/** Strokes lost around the green as balls leave them: normal, mean and sd in strokes. */
export interface StrokesLost {
  readonly mean: number
  readonly sd: number
  /** Balls that were learned from, and how many balls of a test day they tell as much as. */
  readonly balls: number
  readonly worth: number
}

/** What balls say of the strokes lost: each an observation of them, the surer the more its lie and distance multiply them. */
export interface ShortBalls {
  /** Strokes more for every stroke lost on the usual chip, and strokes more than who loses none, in the mean of some balls. */
  readonly means: readonly { readonly factor: number; readonly lost: number; readonly balls: number }[]
  /** Squares of what single balls differ from what they are compared with, strokes, and how many they count for. */
  readonly squares: number
  readonly spare: number
}

/**
 * The posterior of the strokes lost on a chip from 20 m of fairway: normal prior about what was assumed, surer the more balls
 * it was learned from before, and one observation a ball. What one ball costs varies with a pooled variance. Conjugate
 * normal, closed form (Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.5).
 */
export function fitStrokesLost(
  { strokesLost, shots = 0 }: Player['shortGame'],
  { means, squares, spare }: ShortBalls,
): StrokesLost {
  const priorSd = Math.hypot(SHORT_PRIOR_SD.share * strokesLost, SHORT_PRIOR_SD.strokes)
  const priorPrecision = priorSd ** -2 + TEST_BALL_TELLS.strokesLost * shots
  const variance =
    (SHORT_BALL_SD.strokes ** 2 * SHORT_BALL_SD.balls + squares) / (SHORT_BALL_SD.balls + spare)
  let precision = priorPrecision
  let weighted = strokesLost * priorPrecision
  for (const { factor, lost, balls } of means) {
    precision += (balls * factor ** 2) / variance
    weighted += (balls * factor * lost) / variance
  }
  const balls = means.reduce((sum, one) => sum + one.balls, 0)
  return {
    mean: weighted / precision,
    sd: Math.sqrt(1 / precision),
    balls,
    worth: (precision - priorPrecision) / TEST_BALL_TELLS.strokesLost,
  }
}

/** What a test says of the strokes lost: a ball costs the stroke and the putts expected from where it stopped. */
export function fitShortTest(player: Player, results: readonly StationResult[]): StrokesLost {
  const stations = results
    .filter(({ station, balls }) => station.kind === 'short' && balls > 0)
    .map((result) => {
      const { lie, metres } = result.station
      const costs = costsOf(player, result)
      const mean = costs.reduce((sum, cost) => sum + cost, 0) / costs.length
      const squares = costs.reduce((sum, cost) => sum + (cost - mean) ** 2, 0)
      const { without, factor } = strokesByLost(player, lie, metres)
      return { factor, lost: mean - without, balls: costs.length, squares }
    })
  const fit = fitStrokesLost(player.shortGame, {
    means: stations,
    squares: stations.reduce((sum, one) => sum + one.squares, 0),
    spare: stations.reduce((sum, { balls }) => sum + balls - 1, 0),
  })
  return { ...fit, worth: fit.balls }
}

/** Strokes to hole out from off the green of a player who loses none, and how many more for each stroke lost: `shortGameValue` is linear in them. */
export function strokesByLost(
  player: Player,
  lie: Lie,
  metres: number,
): { readonly without: number; readonly factor: number } {
  const lost = (strokesLost: number): number =>
    shortGameValue({ ...player, shortGame: { ...player.shortGame, strokesLost } }, lie, metres)
  const without = lost(0)
  return { without, factor: lost(1) - without }
}

/** What each ball of a station cost: the stroke, and what is expected from where it stopped. */
export function costsOf(player: Player, { holed, leaves }: StationResult): number[] {
  const { expected } = puttingValues(player)
  const after = ({ metres, isOffGreen }: Leave): number =>
    isOffGreen ? shortGameValue(player, 'rough', metres) : expected(metres)
  return [...new Array<number>(holed).fill(1), ...leaves.map((leave) => 1 + after(leave))]
}
