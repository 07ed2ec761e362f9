import type { Course } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { BookFacts, RoundFacts } from './book-facts.ts'

/** What became of a hole: its plan and the hole it is of, or why there is none (empty = not planned yet). */
export type HoleAnswer =
  | { readonly hole: Hole; readonly plan: Plan }
  | { readonly hole: Hole; readonly missing: string }

/** What is printed for all alike: the holes as they are played, in order. */
export function roundFacts(
  course: Course,
  holes: readonly Hole[],
  setting: Pick<RoundFacts, 'day' | 'purpose' | 'ruler' | 'paper' | 'hasFolds' | 'letters'>,
): RoundFacts {
  return {
    ...setting,
    course: course.name,
    holes: holes.map((hole) => ({ hole, plan: null, missing: '', received: null })),
    localRules: course.localRules,
    credit: course.credit,
  }
}

/** What is printed for one player, with the plans there are. */
export function bookFacts(
  round: RoundFacts,
  course: Course,
  player: Player,
  answers: readonly HoleAnswer[],
): BookFacts {
  return {
    ...round,
    playerName: pageName(player.name, player.age),
    player,
    holes: answers.map((answer) => ({
      hole: answer.hole,
      plan: 'plan' in answer ? answer.plan : null,
      missing: 'plan' in answer ? '' : answer.missing,
      received: receivedOn(course, player, answer.hole),
    })),
  }
}

function receivedOn(course: Course, player: Player, hole: Hole): number | null {
  const allowance = HANDICAP_ALLOWANCES['Individual stroke play']
  const handicap = handicapOn(course.teeSets, hole.teeName, player, allowance)
  return handicap === null || hole.strokeIndex === null ? null : strokesReceived(handicap, hole.strokeIndex)
}
