import { practiceTask, recapTask, roundShotsTask, seasonTask } from '#golf/round/round-tasks.ts'
import { serveTasks } from '#outside/workers/serve-tasks.ts'
import type { AfterAnswer, AfterQuestion } from './after-round.ts'

declare const self: DedicatedWorkerGlobalScope

/** Takes rounds apart beside the page, which stays usable meanwhile. */
serveTasks(self, ({ kind, of }: AfterQuestion): AfterAnswer => {
  switch (kind) {
    case 'recap':
      return recapTask(of)
    case 'season':
      return seasonTask(of)
    case 'shots':
      return roundShotsTask(of)
    case 'practice':
      return practiceTask(of)
  }
})
