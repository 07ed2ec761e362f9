import { partialSwings } from '#golf/player/partial-wedges.ts'
import type { Player } from '#golf/player/player.ts'
import type { BagRow } from '#golf/strategy/bag-use.ts'
import type { HoleUse } from '#golf/strategy/club-use.ts'
import type { UnplannedHole } from './batch-tasks.ts'

/** What `marram bag` found out. */
export interface BagAnswer {
  readonly course: string
  readonly player: Player
  /** Holes that were worked out, in the order of the course. */
  readonly holes: readonly HoleUse[]
  readonly rows: readonly BagRow[]
  readonly unplanned: readonly UnplannedHole[]
}

/** `bag/1`: every club's place in the set and what it is for over the holes, in SI; strokes each time the holes are played. */
export function bagDocument({ course, player, holes, rows, unplanned }: BagAnswer): object {
  return {
    schema: 'bag/1',
    course,
    player: player.name,
    hand: player.hand,
    clubs: rows.map(({ club, next, gapMetres, verdict, lies, strokes, near, tee, worth, isNeverAnswer }) => ({
      club: club.name,
      carry_m: club.carryMetres,
      total_m: club.totalMetres,
      guess: player.guesses.has(`clubs.${club.name}.carry_m`),
      next: next?.name ?? null,
      gap_m: gapMetres,
      verdict,
      lies,
      strokes,
      near_strokes: near,
      tee_strokes: tee,
      costs_at_most: worth,
      never_the_answer: isNeverAnswer,
    })),
    partial_swings: partialSwings(player).map(({ club, shape, stock }) => ({
      club,
      swing: shape,
      carry_m: stock.carryMetres,
    })),
    holes: holes.map(({ ref, clubs }) => ({
      hole: ref,
      clubs: clubs.map(({ club, strokes, near, tee, worth }) => ({
        club,
        strokes,
        near_strokes: near,
        tee_strokes: tee,
        costs_at_most: worth,
      })),
    })),
    unplanned,
  }
}
