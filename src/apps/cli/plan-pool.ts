import type { PracticeQuestion } from '#golf/round/practice-hole.ts'
import type { RecapQuestion } from '#golf/round/recap-hole.ts'
import {
  type PracticeAnswer,
  practiceTask,
  type RecapAnswer,
  type RoundShotsAnswer,
  type RoundShotsQuestion,
  recapTask,
  roundShotsTask,
  type SeasonAnswer,
  type SeasonQuestion,
  seasonTask,
} from '#golf/round/round-tasks.ts'
import type { AlternateQuestion } from '#golf/strategy/alternate-shot.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import { type TaskPool, taskPool } from '#outside/workers/task-pool.ts'
import { threadLane } from '#outside/workers/thread-lane.ts'
import {
  clubUseTask,
  type PairAnswer,
  type PlanAnswer,
  pairTask,
  planTask,
  type UseAnswer,
} from './plan-task.ts'

/** Threads that answer questions about holes; 0 = this one. */
export function planPool(size: number): TaskPool<PlanQuestion, PlanAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'planTask' }), here: planTask })
}

/** Threads that answer what the clubs of a bag are for; 0 = this one. */
export function clubUsePool(size: number): TaskPool<PlanQuestion, UseAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'clubUseTask' }), here: clubUseTask })
}

/** Threads that answer what a hole costs a pair; 0 = this one. */
export function pairPool(size: number): TaskPool<AlternateQuestion, PairAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'pairTask' }), here: pairTask })
}

/** Threads that split the holes of a round; 0 = this one. */
export function recapPool(size: number): TaskPool<RecapQuestion, RecapAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'recapTask' }), here: recapTask })
}

/** Threads that split what was logged on the holes of a season; 0 = this one. */
export function seasonPool(size: number): TaskPool<SeasonQuestion, SeasonAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'seasonTask' }), here: seasonTask })
}

/** Threads that find the shots of the holes of rounds; 0 = this one. */
export function roundShotsPool(size: number): TaskPool<RoundShotsQuestion, RoundShotsAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'roundShotsTask' }), here: roundShotsTask })
}

/** Threads that find what practice is worth on the holes of a course; 0 = this one. */
export function practicePool(size: number): TaskPool<PracticeQuestion, PracticeAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'practiceTask' }), here: practiceTask })
}

/** The module of {@link planTask}: beside this one in the sources, and beside the bundle. */
const entry = new URL(import.meta.url.endsWith('.ts') ? './plan-task.ts' : './plan-task.js', import.meta.url)
