import { beforeShots } from '#golf/player/learn-from-shots.ts'
import { learnFromRounds } from '#golf/round/learn-from-rounds.ts'
import { nearGreenTable } from '#golf/round/near-green-table.ts'
import { serveTasks } from '#outside/workers/serve-tasks.ts'
import type { Learned, LearnTask } from './use-learning.ts'

declare const self: DedicatedWorkerGlobalScope

/** Learns beside the page, which stays usable meanwhile. */
serveTasks(self, ({ file, shots, rounds }: LearnTask): Learned => {
  const { nearGreen, ...full } = learnFromRounds(beforeShots(file, shots), rounds)
  return { ...full, nearGreen: nearGreen === null ? null : nearGreenTable(nearGreen) }
})
