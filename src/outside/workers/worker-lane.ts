import type { Lane } from './lane.ts'
import { STOP_PATIENCE_MILLISECONDS } from './settings.ts'

/** The part of a browser's worker that is used, so that a test can stand in for the browser. */
export interface WorkerPort {
  postMessage(asked: Asked<unknown>): void
  onmessage: ((event: { readonly data: unknown }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  terminate(): void
}

/** A task on its way to a worker. */
export interface Asked<Task> {
  readonly task: Task
  /** Shared with the worker: its one number is 1 once the task is to be stopped; `null` where memory cannot be shared. */
  readonly stop: Int32Array | null
}

/** What `serveTasks` answers: the result of a task, or why there is none. */
export type Reply<Result> = { readonly result: Result } | { readonly error: string }

/**
 * A browser's worker that works on one task after another and keeps its module's state between them; started with its
 * first task, and anew after one that broke it. Its module calls `serveTasks`. To stop a task the worker is asked to, and
 * ended when it does not; where memory cannot be shared it is ended at once. Asking comes first because some browsers let
 * an ended worker go on for seconds before they break into its work, and because it keeps what it has laid out.
 *
 * `sharesMemory`: whether the page may share memory with its workers; as the browser says unless given.
 */
export function workerLane<Task, Result>(
  spawn: () => WorkerPort,
  sharesMemory: boolean = isIsolated(),
): Lane<Task, Result> {
  let worker: { readonly port: WorkerPort; readonly stop: Int32Array | null } | null = null

  function end(): void {
    worker?.port.terminate()
    worker = null
  }

  return {
    run(task, signal) {
      return new Promise((resolve, reject) => {
        if (signal.aborted) return reject(signal.reason)
        worker ??= { port: spawn(), stop: sharesMemory ? new Int32Array(new SharedArrayBuffer(4)) : null }
        const { port, stop } = worker
        let patience: ReturnType<typeof setTimeout> | undefined
        const settled = (): void => {
          signal.removeEventListener('abort', stopTask)
          clearTimeout(patience)
        }
        const endTask = (): void => {
          settled()
          end()
          reject(signal.reason)
        }
        const stopTask = (): void => {
          if (stop === null) endTask()
          else {
            Atomics.store(stop, 0, 1)
            patience = setTimeout(endTask, STOP_PATIENCE_MILLISECONDS)
          }
        }
        signal.addEventListener('abort', stopTask, { once: true })
        port.onmessage = ({ data }) => {
          settled()
          const reply = data as Reply<Result>
          if ('result' in reply) resolve(reply.result)
          else reject(signal.aborted ? signal.reason : new Error(reply.error))
        }
        port.onerror = ({ message }) => {
          settled()
          end()
          reject(new Error(message ?? 'The worker stopped without an answer.'))
        }
        if (stop !== null) Atomics.store(stop, 0, 0)
        port.postMessage({ task, stop })
      })
    },
    async close() {
      end()
    },
  }
}

/** Only pages that no other site can look into may share memory with their workers. */
function isIsolated(): boolean {
  return (globalThis as { readonly crossOriginIsolated?: boolean }).crossOriginIsolated === true
}
