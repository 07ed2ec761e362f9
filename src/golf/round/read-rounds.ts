import type { Fault } from '#faults/fault.ts'
import { holesOfRounds, type RoundOfDay } from './holes-of-rounds.ts'
import { encodePlanNumbers, type PlanNumbers, type Planned } from './plan-numbers.ts'
import type { PlayedOn } from './recap-questions.ts'
import type { RoundShotsQuestion } from './round-tasks.ts'
import { addShots, type ShotsOfHole } from './shots-of-hole.ts'
import { sortedText } from './sorted-text.ts'

/** A round that may be learned from. */
export interface RoundToRead extends RoundOfDay {
  /** What tells it from every other round. */
  readonly key: string
  /** What its plans stood on; `null` = not known. */
  readonly planNumbers: PlanNumbers | null
}

/** What rounds say of a player. */
export interface RoundsRead extends ShotsOfHole {
  readonly rounds: number
  /** Rounds of which no day is known: taken as played on a calm, normal day. */
  readonly withoutDay: number
  /** What tells each of them from every other round. */
  readonly keys: readonly string[]
}

/** A question for each hole, tee and day of rounds: all that was logged there. `on.day` stands in for a day that is not known. */
export function roundShotsQuestions(
  rounds: readonly RoundToRead[],
  { course, player, day: calm, tee }: PlayedOn,
  isQuick: boolean,
): { readonly questions: readonly RoundShotsQuestion[]; readonly faults: readonly Fault[] } {
  const asked = byPlan(rounds).map(({ rounds: alike, planned }) => {
    const { holes, faults } = holesOfRounds(course, alike, calm, tee)
    const questions = holes.map(({ hole, day, logged }) => ({
      ...{ hole, player, day, isQuick, planned },
      logged: logged.map((one) => ({ date: one.round.date, hole: one.hole })),
    }))
    return { questions, faults }
  })
  return {
    questions: asked.flatMap(({ questions }) => questions),
    faults: asked.flatMap(({ faults }) => faults),
  }
}

/** Rounds by what their plans stood on, where a stroke of them is said to be the plan's; `null` = the player as learning begins. */
function byPlan(
  rounds: readonly RoundToRead[],
): readonly { readonly rounds: readonly RoundToRead[]; readonly planned: Planned | null }[] {
  const groups = new Map<
    string | null,
    { readonly rounds: RoundToRead[]; readonly planned: Planned | null }
  >()
  for (const one of rounds) {
    const isPlanned = one.round.holes.some(({ strokes }) => strokes.some(({ isAsPlanned }) => isAsPlanned))
    const planned = isPlanned ? one.planNumbers : null
    // Cards of two dates by the same numbers are one plan.
    const key = planned && sortedText(encodePlanNumbers({ ...planned, from: 'card', date: '' }))
    const group = groups.get(key)
    if (group === undefined) groups.set(key, { rounds: [one], planned })
    else group.rounds.push(one)
  }
  return [...groups.values()]
}

/** What the holes of rounds said, taken together. */
export function readRounds(rounds: readonly RoundToRead[], holes: readonly ShotsOfHole[]): RoundsRead {
  return {
    ...addShots(holes),
    rounds: rounds.length,
    withoutDay: rounds.filter(({ day }) => day === null).length,
    keys: rounds.map(({ key }) => key),
  }
}
