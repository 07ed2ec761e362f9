import type { Day } from '#golf/course/day.ts'
import type { Listed } from '../documents/server-documents.ts'
import { type ClosedRound, closedRounds } from '../rounds/closed-rounds.ts'
import { isOfPlayer, isOnCourse, type KeptRounds, type Named } from '../rounds/kept-round.ts'

/** A closed round of the player on a course of the store. */
export interface RoundToLearn extends ClosedRound {
  readonly course: Named
}

/** The rounds of a player, and why others of them cannot be learned from. */
export function roundsToLearn(
  kept: KeptRounds,
  days: readonly Day[],
  courses: readonly Listed[],
  player: Named,
): { readonly rounds: readonly RoundToLearn[]; readonly notes: readonly string[] } {
  const own = kept.rounds.filter(({ belongs }) => isOfPlayer(belongs, player))
  const closed = closedRounds(own, days)
  const notes = [...kept.unread, ...closed.notes]
  const rounds = closed.rounds.flatMap((one) => {
    const course = courses.find((each) => isOnCourse(one.belongs, each))
    if (course !== undefined) return [{ ...one, course }]
    notes.push(`The round of ${one.name} was played on a course that is not kept here: it is left out.`)
    return []
  })
  return { rounds, notes }
}
