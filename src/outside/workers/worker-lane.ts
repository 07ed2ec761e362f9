import type { Lane } from './lane.ts'

/** The part of a browser's worker that is used, so that a test can stand in for the browser. */
export interface WorkerPort {
  postMessage(task: unknown): void
  onmessage: ((event: { readonly data: unknown }) => void) | null
  onerror: ((event: { readonly message?: string }) => void) | null
  terminate(): void
}

/** What {@link serveTasks} answers: the result of a task, or why there is none. */
export type Reply<Result> = { readonly result: Result } | { readonly error: string }

/**
 * A browser's worker that works on one task after another and keeps its module's state between them; started with its
 * first task, and anew after one that was stopped or that broke it. Its module calls {@link serveTasks}.
 */
export function workerLane<Task, Result>(spawn: () => WorkerPort): Lane<Task, Result> {
  let worker: WorkerPort | null = null

  function end(): void {
    worker?.terminate()
    worker = null
  }

  return {
    run(task, signal) {
      return new Promise((resolve, reject) => {
        if (signal.aborted) return reject(signal.reason)
        const asked = worker ?? spawn()
        worker = asked
        const stop = (): void => {
          end()
          reject(signal.reason)
        }
        signal.addEventListener('abort', stop, { once: true })
        asked.onmessage = ({ data }) => {
          signal.removeEventListener('abort', stop)
          const reply = data as Reply<Result>
          if ('result' in reply) resolve(reply.result)
          else reject(new Error(reply.error))
        }
        asked.onerror = ({ message }) => {
          signal.removeEventListener('abort', stop)
          end()
          reject(new Error(message ?? 'The worker stopped without an answer.'))
        }
        asked.postMessage(task)
      })
    },
    async close() {
      end()
    },
  }
}
