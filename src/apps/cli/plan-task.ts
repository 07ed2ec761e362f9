import { answered, type Unanswered } from '#faults/answered.ts'
import {
  type AlternateQuestion,
  alternateShot,
  type Partners,
  type TeeTurn,
} from '#golf/strategy/alternate-shot.ts'
import { clubUse, type HoleUse } from '#golf/strategy/club-use.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import { timedPlan } from './timed-plan.ts'

// biome-ignore lint/performance/noBarrelFile: it is the one module that threads load, and what else they work on is found in it.
export { practiceTask, recapTask, roundShotsTask, seasonTask } from '#golf/round/round-tasks.ts'

/** A hole for a pair by who tees off, or why there is nothing. */
export type PairAnswer = { readonly turns: Partners<TeeTurn> } | Unanswered
/** A plan, or why there is none. */
export type PlanAnswer = { readonly plan: Plan } | Unanswered
/** What the clubs of a bag are for on a hole, or why that cannot be said. */
export type UseAnswer = { readonly use: HoleUse } | Unanswered

/**
 * One task of a round or a batch, in a thread or here: a question in, an answer out, both plain records. This file is
 * bundled on its own, as the module that threads load. Throws only defects.
 */
export function planTask(question: PlanQuestion): PlanAnswer {
  return answered(() => ({ plan: timedPlan(question) }))
}

/** The same for two partners who play one ball by turns. */
export function pairTask(question: AlternateQuestion): PairAnswer {
  return answered(() => ({ turns: alternateShot(question).turns }))
}

/** The same for the use of clubs. */
export function clubUseTask(question: PlanQuestion): UseAnswer {
  return answered(() => ({ use: clubUse(question) }))
}
