import type { Day } from '#golf/course/day.ts'
import { roundsOf } from '../season/rounds-of-season.ts'
import { type ClosedRound, closedRounds } from './closed-rounds.ts'
import { isOnCourse, type KeptRoundFile, type Named } from './kept-round.ts'

/** The closed rounds of one player, each once. */
export interface RoundsOfPlayer {
  readonly player: Named
  readonly rounds: readonly ClosedRound[]
}

/** What is left out, by its number: anything more would say whose it is. */
export function leftWords(rounds: number): string[] {
  if (rounds === 0) return []
  return [
    `${rounds} ${rounds === 1 ? 'round' : 'rounds'}: not closed, kept twice, not to be read, or of nobody who is kept.`,
  ]
}

/** Closed rounds on a course by player, those who have any; and how many rounds on it are left out: open, kept twice, or of nobody who is kept. */
export function closedOfPlayers(
  all: readonly KeptRoundFile[],
  course: Named,
  players: readonly Named[],
  days: readonly Day[],
): { readonly of: readonly RoundsOfPlayer[]; readonly left: number } {
  // A round that gives a name alone is of nobody where several are called so.
  const isClear = ({ belongs: { playerId, player } }: KeptRoundFile): boolean =>
    playerId !== null || players.filter(({ name }) => name === player).length === 1
  const clear = all.filter(isClear)
  const of = players
    .map((player) => ({ player, rounds: closedRounds(roundsOf(clear, course, player), days).rounds }))
    .filter(({ rounds }) => rounds.length > 0)
  const onCourse = all.filter(({ belongs }) => isOnCourse(belongs, course)).length
  return { of, left: onCourse - of.reduce((sum, { rounds }) => sum + rounds.length, 0) }
}
