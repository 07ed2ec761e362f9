import { type LearnedFromShots, learnFromShots } from '#golf/player/learn-from-shots.ts'
import { serveTasks } from '#outside/workers/serve-tasks.ts'
import type { LearnTask } from './use-learning.ts'

declare const self: DedicatedWorkerGlobalScope

/** Learns beside the page, which stays usable meanwhile. */
serveTasks(self, ({ file, shots }: LearnTask): LearnedFromShots => learnFromShots(file, shots))
