import type { Asked, Reply } from './worker-lane.ts'

/** The worker's own side of its port. */
export interface ServingPort {
  addEventListener(type: 'message', listener: (event: { readonly data: never }) => void): void
  postMessage(reply: unknown): void
}

/**
 * Makes a browser's worker answer the tasks of the lane that spawned it. Work that takes long calls `lookUp` many times a
 * second; it throws once the task is to be stopped.
 */
export function serveTasks<Task, Result>(
  port: ServingPort,
  work: (task: Task, lookUp: () => void) => Result,
): void {
  port.addEventListener('message', ({ data }: { readonly data: Asked<Task> }) => {
    port.postMessage(replyTo(data, work))
  })
}

function replyTo<Task, Result>(
  { task, stop }: Asked<Task>,
  work: (task: Task, lookUp: () => void) => Result,
): Reply<Result> {
  const lookUp = (): void => {
    if (stop !== null && Atomics.load(stop, 0) === 1) throw new Error('The task was stopped.')
  }
  try {
    return { result: work(task, lookUp) }
  } catch (error) {
    return { error: error instanceof Error ? error.message : String(error) }
  }
}
