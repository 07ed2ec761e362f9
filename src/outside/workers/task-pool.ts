import { hereLane } from './here-lane.ts'
import type { Lane } from './lane.ts'
import { taskQueue } from './task-queue.ts'

/** How many lanes, and where they are. */
export interface PoolOptions<Task, Result> {
  /** Lanes that work at the same time; 0 = in this thread. */
  readonly size: number
  /** Opens one lane; called `size` times. */
  readonly spawn: () => Lane<Task, Result>
  /** The same work in this thread, for size 0. */
  readonly here: (task: Task) => Result
}

/** What a run may be told besides its tasks. */
export interface RunOptions<Task> {
  /** Tasks of one group share something that a lane keeps between them. Each task is a group of its own unless given. */
  readonly groupOf?: (task: Task) => string
  /** Stops the run. */
  readonly signal?: AbortSignal
  readonly onProgress?: (progress: { readonly done: number; readonly of: number }) => void
}

/** The answer to one task, or what its work threw. `index` = its place among the tasks. */
export type Settled<Result> =
  | { readonly index: number; readonly result: Result }
  | { readonly index: number; readonly error: unknown }

/** Lanes that are opened once and work on any number of runs, one run at a time. */
export interface TaskPool<Task, Result> {
  /**
   * Works on the tasks and hands over each answer as soon as it is there. A task that fails stops no other. When the
   * signal is set, what has been answered is still handed over, everything else is stopped, and then the signal's reason
   * is thrown; leaving the loop early stops the rest too. The pool can be used again.
   */
  run(tasks: readonly Task[], options?: RunOptions<Task>): AsyncGenerator<Settled<Result>, void, undefined>
  close(): Promise<void>
}

/** A pool of lanes; nothing is spawned before the first run needs it. */
export function taskPool<Task, Result>({
  size,
  spawn,
  here,
}: PoolOptions<Task, Result>): TaskPool<Task, Result> {
  const lanes = size === 0 ? [hereLane(here)] : Array.from({ length: size }, spawn)

  async function* run(
    tasks: readonly Task[],
    { groupOf, signal, onProgress }: RunOptions<Task> = {},
  ): AsyncGenerator<Settled<Result>, void, undefined> {
    const queue = taskQueue(tasks.map((task, index) => groupOf?.(task) ?? String(index)))
    const stop = new AbortController()
    const pass = (): void => stop.abort(signal?.reason)
    const running = new Map<Lane<Task, Result>, Promise<Finished<Task, Result>>>()
    let done = 0

    function begin(lane: Lane<Task, Result>, last: string | null): void {
      const next = stop.signal.aborted ? null : queue.take(last)
      if (next === null) return
      const { index, group } = next
      running.set(
        lane,
        lane.run(tasks[index] as Task, stop.signal).then(
          (result) => ({ lane, group, settled: { index, result } }),
          (error: unknown) => ({ lane, group, settled: { index, error } }),
        ),
      )
    }

    if (signal?.aborted) pass()
    signal?.addEventListener('abort', pass, { once: true })
    try {
      for (const lane of lanes) begin(lane, null)
      while (running.size > 0) {
        const { lane, group, settled } = await Promise.race(running.values())
        running.delete(lane)
        begin(lane, group)
        if (stop.signal.aborted && 'error' in settled) continue
        done += 1
        onProgress?.({ done, of: tasks.length })
        yield settled
      }
      stop.signal.throwIfAborted()
    } finally {
      signal?.removeEventListener('abort', pass)
      stop.abort()
      await Promise.all(running.values())
    }
  }

  return {
    run,
    async close() {
      await Promise.all(lanes.map((lane) => lane.close()))
    },
  }
}

/** A task that has settled, with its lane and group. */
interface Finished<Task, Result> {
  readonly lane: Lane<Task, Result>
  readonly group: string
  readonly settled: Settled<Result>
}
