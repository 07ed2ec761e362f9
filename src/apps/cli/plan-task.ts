import type { FaultCode } from '#faults/codes.ts'
import { Failure } from '#faults/failure.ts'
import { type PracticeHole, type PracticeQuestion, practiceHole } from '#golf/round/practice-hole.ts'
import type { HoleRecap } from '#golf/round/recap.ts'
import { type RecapQuestion, recapHole, recapHoles } from '#golf/round/recap-hole.ts'
import type { RoundHole } from '#golf/round/round.ts'
import { type DatedHole, type ShotsOfHole, shotsOfHoles } from '#golf/round/shots-of-hole.ts'
import { clubUse, type HoleUse } from '#golf/strategy/club-use.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import { timedPlan } from './timed-plan.ts'

/** A plan, or why there is none. */
export type PlanAnswer = { readonly plan: Plan } | Unanswered
/** What the clubs of a bag are for on a hole, or why that cannot be said. */
export type UseAnswer = { readonly use: HoleUse } | Unanswered

/** A hole of a round split, or why it cannot be. */
export type RecapAnswer = { readonly recap: HoleRecap } | Unanswered

/** One hole of a season: all that was logged on it on days alike. */
export type SeasonQuestion = Omit<RecapQuestion, 'logged'> & { readonly logged: readonly RoundHole[] }
/** Each of them split, or why it cannot be; or why none of them. */
export type SeasonAnswer = { readonly recaps: readonly RecapAnswer[] } | Unanswered
/** One hole of rounds that are learned from: all that was logged on it on days alike. */
export type RoundShotsQuestion = Omit<RecapQuestion, 'logged'> & { readonly logged: readonly DatedHole[] }
/** What it says of its player's shots, or why it says nothing. */
export type RoundShotsAnswer = { readonly ofHole: ShotsOfHole } | Unanswered
/** What a better player would save on a hole, or why that cannot be said. */
export type PracticeAnswer = { readonly practice: PracticeHole } | Unanswered

/** Why a question about a hole has no answer. */
export interface Unanswered {
  readonly fault: { readonly code: FaultCode; readonly message: string; readonly where: string }
}

/**
 * One task of a round or a batch, in a thread or here: a question in, an answer out, both plain records. This file is
 * bundled on its own, as the module that threads load. Throws only defects.
 */
export function planTask(question: PlanQuestion): PlanAnswer {
  return answered(() => ({ plan: timedPlan(question) }))
}

/** The same for the use of clubs. */
export function clubUseTask(question: PlanQuestion): UseAnswer {
  return answered(() => ({ use: clubUse(question) }))
}

/** The same for a hole as it was played. */
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

function answered<Answer>(work: () => Answer): Answer | Unanswered {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    return unanswered(error)
  }
}

function unanswered({ code, message, where }: Failure): Unanswered {
  return { fault: { code, message, where } }
}
