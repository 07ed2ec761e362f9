import type { Day } from '#golf/course/day.ts'
import { dayOfRound, type RoundOfDay } from '#golf/round/holes-of-rounds.ts'
import { twinRounds } from '#golf/round/season-questions.ts'
import { isOfPlayer, isOnCourse, type KeptRoundFile, type Named } from '../rounds/kept-round.ts'

/** A round that may count, and whether it does. */
export interface CountedRound extends RoundOfDay {
  readonly id: string
  readonly isCounted: boolean
}

/** Which rounds are a player's on a course. */
export function roundsOf(
  all: readonly KeptRoundFile[],
  course: Named,
  player: Named,
): readonly KeptRoundFile[] {
  return all.filter(({ belongs }) => isOnCourse(belongs, course) && isOfPlayer(belongs, player))
}

/** Every closed round with the day of its date; one that is kept twice counts once, and `left` are those that were taken out by hand. */
export function countedRounds(
  own: readonly KeptRoundFile[],
  days: readonly Day[],
  left: ReadonlySet<string>,
): { readonly rounds: readonly CountedRound[]; readonly notes: readonly string[] } {
  const notes: string[] = []
  const rounds: CountedRound[] = []
  for (const { id, round, belongs } of own) {
    const name = round.date ?? id
    const one = { id, name, round, day: dayOfRound(round, days), isCounted: !left.has(id) }
    if (belongs.isOpen) notes.push(`The round of ${name} counts and is not closed yet: it is left out.`)
    else if (twinRounds([...rounds, one]) !== null)
      notes.push(`The round of ${name} is kept twice, and counts once.`)
    else rounds.push(one)
  }
  return { rounds, notes }
}
