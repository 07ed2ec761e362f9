import { errorFault } from '#faults/answered.ts'
import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Day } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { HoleRecap } from './recap.ts'
import type { PlayedOn } from './recap-questions.ts'
import { type RoundRecap, recapRound } from './recap-round.ts'
import type { Round, RoundHole } from './round.ts'
import type { SeasonAnswer, SeasonQuestion } from './round-tasks.ts'

/** A round of a season under the name by which it is known, with its own day; `null` = no conditions of that day are known. */
export interface SeasonRound {
  readonly name: string
  readonly round: Round
  readonly day: Day | null
}

/** The day of a round's date; the only one where a round has no date. */
export function dayOfRound({ date }: Pick<Round, 'date'>, days: readonly Day[]): Day | null {
  if (date === null) return days.length === 1 ? (days[0] ?? null) : null
  return days.find((day) => day.date === date) ?? null
}

/** Two rounds that are one and the same, which would count twice; `null` = none are. */
export function twinRounds(rounds: readonly SeasonRound[]): readonly [SeasonRound, SeasonRound] | null {
  const seen = new Map<string, SeasonRound>()
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
  rounds: readonly SeasonRound[],
  on: PlayedOn,
  isQuick: boolean,
): { readonly questions: readonly SeasonQuestion[]; readonly faults: readonly Fault[] } {
  const groups = new Map<string, { question: Omit<SeasonQuestion, 'logged'>; logged: RoundHole[] }>()
  const faults: Fault[] = []
  for (const { name, round, day } of rounds)
    for (const logged of round.holes) {
      const tee = on.tee ?? round.tee
      const key = JSON.stringify([logged.ref, tee, day])
      const known = groups.get(key)
      if (known !== undefined) {
        known.logged.push(logged)
        continue
      }
      try {
        const played = day ?? on.day
        const hole = holeFromCourse(on.course, logged.ref, { tee: tee ?? undefined, day: played })
        groups.set(key, { question: { hole, player: on.player, day: played, isQuick }, logged: [logged] })
      } catch (error) {
        if (!(error instanceof Failure)) throw error
        faults.push({ ...errorFault(error), place: `${name}, ${error.where}` })
      }
    }
  return { questions: [...groups.values()].map(({ question, logged }) => ({ ...question, logged })), faults }
}

/** A round of a season that could be split. */
export type SplitRound<One extends SeasonRound = SeasonRound> = One & { readonly recap: RoundRecap }

/** What was answered, hole by hole, laid together into rounds again; one of which no hole could be split is left out. */
export function splitRounds<One extends SeasonRound>(
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
