import { drawPlayer } from '#golf/player/draw-player.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import type { Candidate, Situation } from './evaluate-stroke.ts'
import { evaluateNeighbour, type SolvedHole } from './neighbour.ts'
import type { ClubDoubts } from './plan-options.ts'

/** What the plan's figures become over draws of the player, all with the same strikes. */
export interface DoubtOfDraws {
  readonly clubs: ClubDoubts
  /** One draw in ten lies below, one above. */
  readonly valueLow: number
  readonly valueHigh: number
}

const LOW = 0.1
const HIGH = 0.9

/**
 * Plays the best line of each club by players that the given one may be, and compares each club with the first one
 * draw by draw. `seed` makes the draws repeatable.
 */
export function doubtOfDraws(
  solved: SolvedHole,
  situation: Situation,
  best: readonly Candidate[],
  draws: number,
  seed: number,
): DoubtOfDraws {
  const gaps = new Map<string, number[]>(best.map(({ shot }) => [shot.club, []]))
  const wins = new Map<string, number>()
  const values: number[] = []
  for (let draw = 0; draw < draws; draw++) {
    const player = drawPlayer(solved.player, seed + draw)
    const { candidates, value } = evaluateNeighbour(solved, { player }, situation, best, true)
    const first = candidates[0]?.strokes ?? value
    let winner = candidates[0]
    for (const candidate of candidates) {
      gaps.get(candidate.shot.club)?.push(candidate.strokes - first)
      if (winner && candidate.strokes < winner.strokes) winner = candidate
    }
    if (winner) wins.set(winner.shot.club, (wins.get(winner.shot.club) ?? 0) + 1)
    values.push(value)
  }
  const quantile = (list: readonly number[], share: number): number =>
    weightedQuantile(Float64Array.from(list), new Float64Array(list.length).fill(1), share)
  return {
    clubs: new Map(
      [...gaps].map(([club, list]) => [
        club,
        {
          cost_low: quantile(list, LOW),
          cost_high: quantile(list, HIGH),
          best_in_draws: (wins.get(club) ?? 0) / draws,
        },
      ]),
    ),
    valueLow: quantile(values, LOW),
    valueHigh: quantile(values, HIGH),
  }
}
