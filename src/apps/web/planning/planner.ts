import type { Lane } from '#outside/workers/lane.ts'
import { type WorkerPort, workerLane } from '#outside/workers/worker-lane.ts'
import type { Answered, Question } from './questions.ts'

/** What works the plans out: the address of this file as it was built, which is another one for any other worker. */
export const PLANNER: string = import.meta.url

/** A lane to one worker of the planner's. */
export function planner(): Lane<Question, Answered> {
  return workerLane(
    () =>
      new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' }) as unknown as WorkerPort,
  )
}
