import { PUTT_AIMS_FOR_SLOWER, PUTT_PAST_METRES } from './near-green-settings.ts'
import type { Putting } from './player.ts'
import { type PuttAim, type PuttScatter, scatterInto } from './putt-scatter.ts'
import type { RollChart } from './roll-chart.ts'

/** Putts that a ball at rest is worth. */
export type PuttsAt = (x: number, y: number) => number

/**
 * Chooses the pace and the aim with the fewest expected putts and leaves that putt's scatter: the cheapest pace on its own
 * line, then the cheapest aim at it.
 */
export function aimPuttInto(
  scatter: PuttScatter,
  chart: RollChart,
  putting: Putting,
  slowing: number,
  valueAt: PuttsAt,
): PuttAim {
  let best: PuttAim = { past: 0, slower: 0 }
  let least = Number.POSITIVE_INFINITY
  const isBetter = (aim: PuttAim): boolean => {
    scatterInto(scatter, chart, putting, aim, slowing)
    const strokes = strokesOf(scatter, valueAt)
    if (strokes >= least) return false
    least = strokes
    best = aim
    return true
  }
  // Over the paces the cost falls and rises but once.
  for (const past of PUTT_PAST_METRES) if (!isBetter({ past, slower: 0 })) break
  const { past } = best
  for (const slower of PUTT_AIMS_FOR_SLOWER) isBetter({ past, slower })
  scatterInto(scatter, chart, putting, best, slowing)
  return best
}

/** Expected putts of a scatter: this one, and what its missed balls are worth where they stop. */
export function strokesOf(scatter: PuttScatter, valueAt: PuttsAt): number {
  let strokes = 1
  for (let ball = 0; ball < scatter.count; ball += 1)
    strokes += (scatter.weight[ball] ?? 0) * valueAt(scatter.x[ball] ?? 0, scatter.y[ball] ?? 0)
  return strokes
}
