import type { RecapQuestion } from '#golf/round/recap-hole.ts'
import type { PlanQuestion } from '#golf/strategy/plan-hole.ts'
import { type TaskPool, taskPool } from '#outside/workers/task-pool.ts'
import { threadLane } from '#outside/workers/thread-lane.ts'
import {
  clubUseTask,
  type PlanAnswer,
  planTask,
  type RecapAnswer,
  recapTask,
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

/** Threads that split the holes of a round; 0 = this one. */
export function recapPool(size: number): TaskPool<RecapQuestion, RecapAnswer> {
  return taskPool({ size, spawn: () => threadLane({ entry, name: 'recapTask' }), here: recapTask })
}

/** The module of {@link planTask}: beside this one in the sources, and beside the bundle. */
const entry = new URL(import.meta.url.endsWith('.ts') ? './plan-task.ts' : './plan-task.js', import.meta.url)
