import { errorFault } from '#faults/answered.ts'
import type { Fault } from '#faults/fault.ts'
import { holesOfRounds, type RoundOfDay } from './holes-of-rounds.ts'
import type { HoleRecap } from './recap.ts'
import type { PlayedOn } from './recap-questions.ts'
import { type RoundRecap, recapRound } from './recap-round.ts'
import type { RoundHole } from './round.ts'
import type { SeasonAnswer, SeasonQuestion } from './round-tasks.ts'

/** Two rounds that are one and the same, which would count twice; `null` = none are. */
export function twinRounds(rounds: readonly RoundOfDay[]): readonly [RoundOfDay, RoundOfDay] | null {
  const seen = new Map<string, RoundOfDay>()
  for (const one of rounds) {
    const key = JSON.stringify(one.round)
    const before = seen.get(key)
    if (before !== undefined) return [before, one]
    seen.set(key, one)
  }
  return null
}

/** A question for each hole, tee and day: all that was logged there. `on.day` stands in for a day that is not known. */
export function seasonQuestions(
  rounds: readonly RoundOfDay[],
  { course, player, day: calm, tee }: PlayedOn,
  isQuick: boolean,
): { readonly questions: readonly SeasonQuestion[]; readonly faults: readonly Fault[] } {
  const { holes, faults } = holesOfRounds(course, rounds, calm, tee)
  const questions = holes.map(({ hole, day, logged }) => ({
    ...{ hole, player, day, isQuick },
    logged: logged.map((one) => one.hole),
  }))
  return { questions, faults }
}

/** A round of a season that could be split. */
export type SplitRound<One extends RoundOfDay = RoundOfDay> = One & { readonly recap: RoundRecap }

/** What was answered, hole by hole, laid together into rounds again; one of which no hole could be split is left out. */
export function splitRounds<One extends RoundOfDay>(
  rounds: readonly One[],
  answers: readonly {
    readonly question: SeasonQuestion
    readonly answer: Exclude<SeasonAnswer, { readonly fault: unknown }>
  }[],
): { readonly rounds: readonly SplitRound<One>[]; readonly faults: readonly Fault[] } {
  const holes = new Map<RoundHole, HoleRecap>()
  const faults: Fault[] = []
  for (const { question, answer } of answers)
    for (const [index, one] of answer.recaps.entries())
      if ('fault' in one) faults.push(errorFault(one.fault))
      else holes.set(question.logged[index] as RoundHole, one.recap)
  const split = rounds
    .map((one) => ({ ...one, recap: recapRound(one.round.holes.flatMap((hole) => holes.get(hole) ?? [])) }))
    .filter(({ recap }) => recap.holes.length > 0)
  return {
    rounds: split,
    faults: [...faults, ...split.flatMap(({ recap }) => recap.holes.flatMap((hole) => hole.faults))],
  }
}
