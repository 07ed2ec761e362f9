import { metresToYards } from '#numbers/units/units.ts'
import {
  HOLE_OUT_MOST_OF_UP_AND_DOWNS,
  HOLE_OUT_YARDS,
  UP_AND_DOWN_STEEPNESS,
  UP_AND_DOWN_SURE_MEAN,
} from './near-green-settings.ts'
import type { Lie } from './player.ts'
import { puttingValues } from './putting-values.ts'
import { type ShortGamePlayer, shortGameValue } from './short-game-values.ts'

/** Scores of the shares: 1 stroke, 2, … up to this many; the last is taken as exactly that many. */
const MOST_STROKES = 8

/**
 * Chances of holing out in exactly 1, 2, 3, … 8 strokes from off the green. They add up to 1 and their mean is
 * {@link shortGameValue} (the last entry stands for exactly 8). Up-and-downs follow the published pairs of mean and
 * share; what is longer falls off geometrically from three. On the green the first three are the putting shares.
 * `here`: the mean at this very place, and what its slopes add to the chances of one and of two putts.
 */
export function shortGameShares(
  player: ShortGamePlayer,
  lie: Lie,
  metres: number,
  here?: { readonly mean: number; readonly one: number; readonly two: number },
): Float64Array {
  const mean = here?.mean ?? shortGameValue(player, lie, metres)
  if (lie === 'green') {
    const [flatOne, flatTwo] = puttingValues(player).shares(metres)
    const one = Math.min(1, Math.max(0, 2 - mean, flatOne + (here?.one ?? 0)))
    const two = Math.min(1 - one, Math.max(0, flatTwo + (here?.two ?? 0)))
    return withMean(mean, one, one + two)
  }
  const upAndDown = Math.min(1, Math.exp(-UP_AND_DOWN_STEEPNESS * (mean - UP_AND_DOWN_SURE_MEAN)))
  const usual =
    (HOLE_OUT_YARDS / Math.max(1, metresToYards(metres))) * Math.exp(-player.shortGame.strokesLost)
  // From a bad lie right beside the hole few go in; a mean under two leaves no choice.
  const holeOut = Math.min(1, Math.max(Math.min(usual, HOLE_OUT_MOST_OF_UP_AND_DOWNS * upAndDown), 2 - mean))
  return withMean(mean, holeOut, upAndDown)
}

/** Shares with this mean: `one` in one, `atMostTwo` in at most two as far as the mean allows, the rest geometric from three. */
function withMean(mean: number, one: number, atMostTwo: number): Float64Array {
  const shares = new Float64Array(MOST_STROKES)
  // Strokes over two that the later scores must bring: (1 − atMostTwo) · (their mean − 2), their mean between 3 and 8.
  const excess = Math.max(0, mean - 2 + one)
  const late = Math.min(Math.max(1 - Math.min(1, atMostTwo), excess / (MOST_STROKES - 2.5)), excess, 1 - one)
  shares[0] = one
  shares[1] = 1 - one - late
  if (late <= 0) return shares
  const ratio = geometricRatio(excess / late - 1)
  let size = 0
  for (let strokes = 3; strokes <= MOST_STROKES; strokes += 1) size += ratio ** (strokes - 3)
  for (let strokes = 3; strokes <= MOST_STROKES; strokes += 1) {
    shares[strokes - 1] = (late * ratio ** (strokes - 3)) / size
  }
  return shares
}

/** Ratio of a geometric run over 3 … 8 strokes whose mean is 3 + `beyond`; found by bisection. */
function geometricRatio(beyond: number): number {
  let low = 0
  let high = 50
  for (let step = 0; step < 200 && high - low > 1e-16 * high; step += 1) {
    const middle = (low + high) / 2
    let power = 1
    let size = 0
    let sum = 0
    for (let k = 0; k <= MOST_STROKES - 3; k += 1) {
      size += power
      sum += k * power
      power *= middle
    }
    if (sum / size < beyond) low = middle
    else high = middle
  }
  return (low + high) / 2
}
