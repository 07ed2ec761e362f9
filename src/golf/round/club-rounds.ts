import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import { type DayPin, REFERENCE_DAY } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import { type Club, clubOf } from './club.ts'
import type { RoundOfDay } from './holes-of-rounds.ts'
import type { SeasonQuestion } from './round-tasks.ts'
import { type SplitRound, seasonQuestions } from './season-questions.ts'

/** A round of the member with this number among the players that are given. */
export interface MemberRound extends RoundOfDay {
  readonly member: number
}

/** What is to be worked out for the rounds of many members, each against the plans for that member. */
export function clubQuestions(
  rounds: readonly MemberRound[],
  players: readonly Player[],
  course: Course,
  isQuick: boolean,
): { readonly questions: readonly SeasonQuestion[]; readonly faults: readonly Fault[] } {
  const asked = players.map((player, member) =>
    seasonQuestions(
      rounds.filter((round) => round.member === member),
      { course, player, day: REFERENCE_DAY, tee: null },
      isQuick,
    ),
  )
  return {
    questions: asked.flatMap(({ questions }) => questions),
    faults: asked.flatMap(({ faults }) => faults),
  }
}

/** Rounds of many members once they are split, taken together. */
export function clubOfRounds(split: readonly SplitRound<MemberRound>[], minimum: number): Club {
  return clubOf(
    split.map(({ member, round, day, recap }) => ({
      member,
      tee: round.tee,
      locations: Object.fromEntries(
        Object.entries(day?.pins ?? {}).map(([ref, pin]) => [ref, pinWords(pin)]),
      ),
      recap,
    })),
    minimum,
  )
}

function pinWords({ xPaces, yPaces, from }: DayPin): string {
  return `${yPaces} paces on, ${from === 'middle' ? 'in the middle' : `${xPaces} from the ${from}`}`
}
