import type { BrowserContext, CDPSession, Page } from 'playwright-core'

/** Memory after a forced collection. */
export interface Heap {
  /** Megabytes of the page: what its scripts hold, their buffers and its elements. */
  readonly page: number
  /** Megabytes of all its workers. */
  readonly workers: number
  /** Elements and texts of the page, those cut off and still held included. */
  readonly nodes: number
  readonly listeners: number
}

/** Measures the page's memory and that of its workers. */
export interface HeapMeter {
  measure(): Promise<Heap>
}

interface Usage {
  readonly usedSize: number
  readonly embedderHeapUsedSize?: number
  readonly backingStorageSize?: number
}

/** Attaches to a page by the browser's own protocol. */
export async function heapMeter(context: BrowserContext, page: Page): Promise<HeapMeter> {
  const session = await context.newCDPSession(page)
  const workers = await workerSessions(session)
  return {
    async measure() {
      const counters = (await session.send('Memory.getDOMCounters')) as {
        nodes: number
        jsEventListeners: number
      }
      const own = await collected((method) => session.send(method as 'Runtime.getHeapUsage'))
      let others = 0
      for (const send of workers.values()) others += await collected(send).catch(() => 0)
      return { page: own, workers: others, nodes: counters.nodes, listeners: counters.jsEventListeners }
    },
  }
}

type Send = (method: string) => Promise<unknown>

/** Megabytes in use when nothing that can be collected is left. */
async function collected(send: Send): Promise<number> {
  // Twice: what the first frees may have held more.
  await send('HeapProfiler.collectGarbage')
  await send('HeapProfiler.collectGarbage')
  const usage = (await send('Runtime.getHeapUsage')) as Usage
  return (usage.usedSize + (usage.embedderHeapUsedSize ?? 0) + (usage.backingStorageSize ?? 0)) / 1e6
}

/** A way to send to each worker that lives. */
async function workerSessions(session: CDPSession): Promise<ReadonlyMap<string, Send>> {
  const workers = new Map<string, Send>()
  const answers = new Map<number, (result: unknown) => void>()
  let count = 0
  session.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message) as { id?: number; result?: unknown }
    if (id !== undefined) answers.get(id)?.(result ?? {})
  })
  session.on('Target.attachedToTarget', ({ sessionId }) => {
    workers.set(sessionId, (method) => {
      count += 1
      const id = count
      return new Promise((done, fail) => {
        const late = setTimeout(() => fail(new Error(`a worker does not answer ${method}`)), 10_000)
        answers.set(id, (result) => {
          clearTimeout(late)
          answers.delete(id)
          done(result)
        })
        session
          .send('Target.sendMessageToTarget', { sessionId, message: JSON.stringify({ id, method }) })
          .catch(fail)
      })
    })
  })
  session.on('Target.detachedFromTarget', ({ sessionId }) => workers.delete(sessionId))
  await session.send('Target.setAutoAttach', {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  })
  return workers
}
