import { answered, type Unanswered, unanswered } from '#faults/answered.ts'
import { Failure } from '#faults/failure.ts'
import type { DatedHole } from './dated-hole.ts'
import type { Planned } from './plan-numbers.ts'
import { type PracticeHole, type PracticeQuestion, practiceHole } from './practice-hole.ts'
import type { HoleRecap } from './recap.ts'
import { type RecapQuestion, recapHole, recapHoles } from './recap-hole.ts'
import type { RoundHole } from './round.ts'
import { type ShotsOfHole, shotsOfHoles } from './shots-of-hole.ts'

/** A hole of a round split, or why it cannot be. */
export type RecapAnswer = { readonly recap: HoleRecap } | Unanswered

/** One hole of a season: all that was logged on it on days alike. */
export type SeasonQuestion = Omit<RecapQuestion, 'logged'> & { readonly logged: readonly RoundHole[] }
/** Each of them split, or why it cannot be; or why none of them. */
export type SeasonAnswer = { readonly recaps: readonly RecapAnswer[] } | Unanswered

/** One hole of rounds that are learned from: all that was logged on it on days alike. */
export type RoundShotsQuestion = Omit<RecapQuestion, 'logged'> & {
  readonly logged: readonly DatedHole[]
  readonly planned: Planned | null
}
/** What it says of its player's shots, or why it says nothing. */
export type RoundShotsAnswer = { readonly ofHole: ShotsOfHole } | Unanswered

/** What a better player would save on a hole, or why that cannot be said. */
export type PracticeAnswer = { readonly practice: PracticeHole } | Unanswered

/** One hole as it was played, for a thread or a worker: plain records in and out. Throws only defects. */
export function recapTask(question: RecapQuestion): RecapAnswer {
  return answered(() => ({ recap: recapHole(question) }))
}

/** The same for a hole of a season. */
export function seasonTask(question: SeasonQuestion): SeasonAnswer {
  return answered(() => ({
    recaps: recapHoles(question).map((one) => (one instanceof Failure ? unanswered(one) : { recap: one })),
  }))
}

/** The same for the shots of a hole in rounds. */
export function roundShotsTask(question: RoundShotsQuestion): RoundShotsAnswer {
  return answered(() => ({ ofHole: shotsOfHoles(question) }))
}

/** The same for what practice is worth on a hole. */
export function practiceTask(question: PracticeQuestion): PracticeAnswer {
  return answered(() => ({ practice: practiceHole(question) }))
}
