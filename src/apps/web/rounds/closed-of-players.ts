import type { Day } from '#golf/course/day.ts'
import { roundsOf } from '../season/rounds-of-season.ts'
import { type ClosedRound, closedRounds } from './closed-rounds.ts'
import { isOnCourse, type KeptRoundFile, type Named } from './kept-round.ts'

/** The closed rounds of one player, each once. */
export interface RoundsOfPlayer {
  readonly player: Named
  readonly rounds: readonly ClosedRound[]
}

/** Closed rounds on a course by player, those who have any; and how many rounds on it are left out: open, kept twice, or of nobody who is kept. */
export function closedOfPlayers(
  all: readonly KeptRoundFile[],
  course: Named,
  players: readonly Named[],
  days: readonly Day[],
): { readonly of: readonly RoundsOfPlayer[]; readonly left: number } {
  const of = players
    .map((player) => ({ player, rounds: closedRounds(roundsOf(all, course, player), days).rounds }))
    .filter(({ rounds }) => rounds.length > 0)
  const onCourse = all.filter(({ belongs }) => isOnCourse(belongs, course)).length
  return { of, left: onCourse - of.reduce((sum, { rounds }) => sum + rounds.length, 0) }
}
