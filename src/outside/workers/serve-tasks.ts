import type { Reply } from './worker-lane.ts'

/** The worker's own side of its port. */
export interface ServingPort {
  addEventListener(type: 'message', listener: (event: { readonly data: never }) => void): void
  postMessage(reply: unknown): void
}

/** Makes a browser's worker answer the tasks of the lane that spawned it. */
export function serveTasks<Task, Result>(port: ServingPort, work: (task: Task) => Result): void {
  port.addEventListener('message', ({ data }: { readonly data: Task }) => {
    port.postMessage(replyTo(data, work))
  })
}

function replyTo<Task, Result>(task: Task, work: (task: Task) => Result): Reply<Result> {
  try {
    return { result: work(task) }
  } catch (error) {
    return { error: error instanceof Error ? error.message : String(error) }
  }
}
