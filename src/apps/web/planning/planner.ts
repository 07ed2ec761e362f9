import type { Lane } from '#outside/workers/lane.ts'
import { type WorkerPort, workerLane } from '#outside/workers/worker-lane.ts'
import type { Answered, Question } from './questions.ts'

/** A lane to one worker of the planner's. */
export function planner(): Lane<Question, Answered> {
  return workerLane(
    () =>
      new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' }) as unknown as WorkerPort,
  )
}
