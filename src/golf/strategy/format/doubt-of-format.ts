import { drawPlayer } from '#golf/player/draw-player.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import { type Situation, tableFor } from '../evaluate-stroke.ts'
import { DRAW_QUADRATURE } from '../format-settings.ts'
import type { HoleModel } from '../hole-model.ts'
import type { ClubDoubts } from '../plan-options.ts'
import type { Shot } from '../shots.ts'
import { shotsRedrawn } from '../shots.ts'
import { strikesOf } from '../strikes.ts'
import { strokeEnds } from '../stroke-ends.ts'
import type { FormatEvaluation } from './evaluate-format.ts'
import type { Levels } from './levels.ts'

/** What the worth of a format's plan and its gaps become over draws of the player. */
export interface DoubtOfFormat {
  readonly clubs: ClubDoubts
  /** One draw in ten lies below, one above. */
  readonly low: number
  readonly high: number
}

/**
 * Plays this one stroke, each club on its line, by players that the given one may be; the strokes after it stay the
 * player's own. The same draws as for strokes, compared draw by draw.
 */
export function doubtOfFormat(
  model: HoleModel,
  levels: Levels,
  evaluation: FormatEvaluation,
  shots: readonly Shot[],
  situation: Situation,
  played: number,
  draws: number,
  seed: number,
): DoubtOfFormat {
  const strikes = strikesOf(DRAW_QUADRATURE)
  const clubs = evaluation.best.map(({ candidate }) => candidate)
  const gaps = clubs.map((): number[] => [])
  const wins = clubs.map(() => 0)
  const worths: number[] = []
  for (let draw = 0; draw < draws; draw++) {
    const player = drawPlayer(model.player, seed + draw)
    const redrawn = shotsRedrawn(shots, model.player, player)
    const drawn = clubs.map(({ shot, heading }) => {
      const own = redrawn[shots.indexOf(shot)] ?? shot
      const table = tableFor({ ...model, player }, situation, own, heading, strikes)
      return levels.worthOfStroke(
        strokeEnds(model, table, situation.x, situation.y),
        played + 1,
        evaluation.again.worth,
      )
    })
    const most = Math.max(...drawn)
    const first = drawn[0] ?? most
    for (const [index, worth] of drawn.entries()) gaps[index]?.push(first - worth)
    const winner = drawn.indexOf(most)
    wins[winner] = (wins[winner] ?? 0) + 1
    worths.push(first)
  }
  return {
    clubs: new Map(
      clubs.map(({ shot }, index) => [
        shot.club,
        {
          cost_low: quantile(gaps[index] ?? [], 0.1),
          cost_high: quantile(gaps[index] ?? [], 0.9),
          best_in_draws: (wins[index] ?? 0) / draws,
        },
      ]),
    ),
    low: quantile(worths, 0.1),
    high: quantile(worths, 0.9),
  }
}

function quantile(list: readonly number[], share: number): number {
  return weightedQuantile(Float64Array.from(list), new Float64Array(list.length).fill(1), share)
}
