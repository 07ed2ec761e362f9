import { convolve } from '#numbers/statistics/convolve.ts'
import { sharesOfLeast } from '#numbers/statistics/shares-of-least.ts'
import type { Plan } from './plan.ts'

/**
 * Chance of each total over holes that are planned, `chances[k]` that of `k` strokes. Holes are independent: a good or a bad
 * day, which moves all of them together, is not in it, so far totals come a little too rarely.
 */
export function roundScores(plans: readonly Pick<Plan, 'options'>[]): number[] {
  return convolve(plans.map(({ options }) => listOf(options[0]?.scores ?? { '0': 1 })))
}

function listOf(scores: Readonly<Record<string, number>>): number[] {
  const list: number[] = []
  for (const [strokes, chance] of Object.entries(scores)) {
    while (list.length <= Number(strokes)) list.push(0)
    list[Number(strokes)] = chance
  }
  return list
}

/** Chance of fewer strokes than a number: of breaking it. */
export function chanceOfBreaking(scores: readonly number[], number: number): number {
  return scores.slice(0, Math.max(0, number)).reduce((sum, chance) => sum + chance, 0)
}

/**
 * Each player's share of winning a stroke-play field by the chances of their totals, ties shared evenly. `handicaps`: whole
 * strokes that are taken off each total; absent = none.
 */
export function winningShares(
  totals: readonly (readonly number[])[],
  handicaps: readonly number[] = totals.map(() => 0),
): number[] {
  // What is taken off the others is added here, since no total is negative.
  const most = Math.max(0, ...handicaps)
  return sharesOfLeast(
    totals.map((scores, player) => [
      ...new Array<number>(most - (handicaps[player] ?? 0)).fill(0),
      ...scores,
    ]),
  )
}
