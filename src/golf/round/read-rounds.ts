import type { Fault } from '#faults/fault.ts'
import { holesOfRounds, type RoundOfDay } from './holes-of-rounds.ts'
import type { PlayedOn } from './recap-questions.ts'
import type { RoundShotsQuestion } from './round-tasks.ts'
import { addShots, type ShotsOfHole } from './shots-of-hole.ts'

/** A round that may be learned from. */
export interface RoundToRead extends RoundOfDay {
  /** What tells it from every other round. */
  readonly key: string
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
  const { holes, faults } = holesOfRounds(course, rounds, calm, tee)
  const questions = holes.map(({ hole, day, logged }) => ({
    ...{ hole, player, day, isQuick },
    logged: logged.map((one) => ({ date: one.round.date, hole: one.hole })),
  }))
  return { questions, faults }
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
