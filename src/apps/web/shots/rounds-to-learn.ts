import type { Day } from '#golf/course/day.ts'
import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import type { RoundToRead } from '#golf/round/read-rounds.ts'
import { twinRounds } from '#golf/round/season-questions.ts'
import type { Listed } from '../documents/server-documents.ts'
import { isOfPlayer, isOnCourse, type KeptRounds, type Named } from '../rounds/kept-round.ts'

/** A closed round of the player on a course of the store. */
export interface RoundToLearn extends RoundToRead {
  readonly id: string
  readonly course: Named
}

/** The rounds of a player, and why others of them cannot be learned from; one that is kept twice stands once. */
export function roundsToLearn(
  kept: KeptRounds,
  days: readonly Day[],
  courses: readonly Listed[],
  player: Named,
): { readonly rounds: readonly RoundToLearn[]; readonly notes: readonly string[] } {
  const notes = [...kept.unread]
  const rounds: RoundToLearn[] = []
  for (const { id, round, key, belongs } of kept.rounds) {
    if (!isOfPlayer(belongs, player)) continue
    const name = round.date ?? id
    const course = courses.find((one) => isOnCourse(belongs, one))
    if (belongs.isOpen) {
      notes.push(`The round of ${name} counts and is not closed yet: it is left out.`)
      continue
    }
    if (course === undefined) {
      notes.push(`The round of ${name} was played on a course that is not kept here: it is left out.`)
      continue
    }
    const one = { id, name, round, key, course, day: dayOfRound(round, days) }
    if (rounds.some((other) => other.key === key) || twinRounds([...rounds, one]) !== null)
      notes.push(`The round of ${name} is kept twice, and stands once.`)
    else rounds.push(one)
  }
  return { rounds, notes }
}
