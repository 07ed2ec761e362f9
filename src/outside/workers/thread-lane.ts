import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import { Piscina } from 'piscina'
import type { Lane } from './lane.ts'

/** Where a thread finds its work: a module, and the function that it exports for it. */
export interface ThreadWork {
  readonly entry: URL
  readonly name: string
}

/**
 * A thread of Node that works on one task after another and keeps its module's state between them; started with its first
 * task. Tasks and results are plain records: they are copied between threads.
 */
export function threadLane<Task, Result>(work: ThreadWork): Lane<Task, Result> {
  let thread: Piscina<Task, Result> | null = null

  async function close(): Promise<void> {
    const ending = thread
    thread = null
    await ending?.destroy()
  }

  return {
    async run(task, signal) {
      signal.throwIfAborted()
      thread ??= startThread(work)
      let ending: Promise<void> | null = null
      const stop = (): void => {
        ending = close()
      }
      signal.addEventListener('abort', stop, { once: true })
      try {
        return await thread.run(task)
      } catch (error) {
        await ending
        signal.throwIfAborted()
        throw error
      } finally {
        signal.removeEventListener('abort', stop)
      }
    },
    close,
  }
}

/** A pool of the library's with one thread: a lane keeps what it laid out, so no other thread may take its tasks. */
function startThread<Task, Result>({ entry, name }: ThreadWork): Piscina<Task, Result> {
  return new Piscina<Task, Result>({
    filename: entry.href,
    name,
    minThreads: 1,
    maxThreads: 1,
    idleTimeout: Number.POSITIVE_INFINITY,
    execArgv: entry.pathname.endsWith('.ts') ? ['--import', sourceLoader()] : [],
  })
}

/** What lets Node read the sources themselves, in development and in tests. */
function sourceLoader(): string {
  return pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href
}
