import type { Unanswered } from '#faults/answered.ts'
import type { PracticeQuestion } from '#golf/round/practice-hole.ts'
import type { RecapQuestion } from '#golf/round/recap-hole.ts'
import type {
  PracticeAnswer,
  RecapAnswer,
  RoundShotsAnswer,
  RoundShotsQuestion,
  SeasonAnswer,
  SeasonQuestion,
} from '#golf/round/round-tasks.ts'
import type { Lane } from '#outside/workers/lane.ts'
import { type WorkerPort, workerLane } from '#outside/workers/worker-lane.ts'
import type { Missing } from './work-pieces.ts'

/** What is asked of one hole after a round, after a season, of the shots in rounds, and of practice. */
export type AfterQuestion =
  | { readonly kind: 'recap'; readonly of: RecapQuestion }
  | { readonly kind: 'season'; readonly of: SeasonQuestion }
  | { readonly kind: 'shots'; readonly of: RoundShotsQuestion }
  | { readonly kind: 'practice'; readonly of: PracticeQuestion }

export type AfterAnswer = RecapAnswer | SeasonAnswer | RoundShotsAnswer | PracticeAnswer

/** A lane to one worker of {@link AfterQuestion}s. */
export function afterRound(): Lane<AfterQuestion, AfterAnswer> {
  return workerLane(
    () =>
      new Worker(new URL('./after-round-worker.ts', import.meta.url), {
        type: 'module',
      }) as unknown as WorkerPort,
  )
}

/** What is kept of an answer: why there is none as words. */
export function afterState(answer: AfterAnswer): Exclude<AfterAnswer, Unanswered> | Missing {
  return 'fault' in answer ? { missing: answer.fault.message } : answer
}
