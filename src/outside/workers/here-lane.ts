import type { Lane } from './lane.ts'

/**
 * Works in this thread. Between two tasks whatever else waits has its turn, so that progress shows and a signal comes
 * through; a task that has begun is finished.
 */
export function hereLane<Task, Result>(work: (task: Task) => Result): Lane<Task, Result> {
  return {
    async run(task, signal) {
      await new Promise((resolve) => setTimeout(resolve, 0))
      signal.throwIfAborted()
      return work(task)
    },
    async close() {},
  }
}
