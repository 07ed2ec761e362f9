import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { BUNDLED_ADDRESS, bundledPage } from '../../tools/bundled-page.ts'
import { type OpenBrowser, openBrowser } from '../../tools/open-browser.ts'

/**
 * The pool that plans rounds in Node, with a real browser's workers at the ends of its lanes. Their work: a number in, its double out; below 0 the work never ends by itself, below -9 without ever looking up; at 0 it breaks.
 */
const WORKER = `
import { serveTasks } from '#outside/workers/serve-tasks.ts'
let calls = 0
serveTasks(self, (number, lookUp) => {
  while (number < 0) if (number > -10) lookUp()
  if (number === 0) throw new RangeError('nothing to work on')
  calls += 1
  return { double: 2 * number, calls }
})`

const PAGE = `
import { taskPool } from '#outside/workers/task-pool.ts'
import { workerLane } from '#outside/workers/worker-lane.ts'
const pool = taskPool({
  size: 2,
  spawn: () => workerLane(() => new Worker('${BUNDLED_ADDRESS}/worker.js', { type: 'module' })),
  here: () => { throw new Error('not here') },
})
globalThis.runPool = async (tasks, stopAfter = Infinity) => {
  const stop = new AbortController()
  const told = []
  try {
    for await (const { index, result, error } of pool.run(tasks, { signal: stop.signal })) {
      told.push({ index, double: result?.double, calls: result?.calls, error: error?.message })
      if (told.length === stopAfter) stop.abort()
    }
    return { told, end: 'done' }
  } catch (reason) {
    return { told, end: reason.name }
  }
}`

let browser: OpenBrowser
let page: Page

beforeAll(async () => {
  browser = await openBrowser()
  page = await bundledPage(browser.context, { page: PAGE, worker: WORKER, ready: 'runPool' })
})

afterAll(() => browser?.close())

interface Outcome {
  readonly told: readonly {
    readonly index: number
    readonly double?: number
    readonly calls?: number
    readonly error?: string
  }[]
  readonly end: string
}

const runPool = (words: string): Promise<Outcome> => page.evaluate(`runPool(${words})`) as Promise<Outcome>

describe('the pool in a browser', () => {
  it('answers every task, the one that breaks too, and keeps its two workers', async () => {
    const { told, end } = await runPool('[1, 0, 3, 4, 5, 6]')
    expect(end).toBe('done')
    const inOrder = [...told].sort((a, b) => a.index - b.index)
    expect(inOrder.map(({ double }) => double ?? null)).toEqual([2, null, 6, 8, 10, 12])
    expect(inOrder[1]?.error).toBe('nothing to work on')
    expect(Math.max(...told.map(({ calls = 0 }) => calls))).toBeGreaterThan(1)
  })

  it('stops work that looks up, in workers that are kept', async () => {
    // Again until it is seen: on a busy machine a worker may look up later than the lane has patience.
    const fewestCalls = async (): Promise<number> => {
      const stopped = await runPool('[-1, 7, -2], 1')
      expect(stopped).toMatchObject({ told: [{ index: 1, double: 14 }], end: 'AbortError' })
      const again = await runPool('[8, 9, 10]')
      expect(again.end).toBe('done')
      return Math.min(...again.told.map(({ calls = 0 }) => calls))
    }
    await expect.poll(fewestCalls, { timeout: 60_000 }).toBeGreaterThan(1)
  })

  it('ends workers that do not look up, and works again in fresh ones', async () => {
    const stopped = await runPool('[-10, 7, -11], 1')
    expect(stopped).toMatchObject({ told: [{ index: 1, double: 14 }], end: 'AbortError' })
    const again = await runPool('[8, 9]')
    expect(again.end).toBe('done')
    expect(again.told.map(({ calls }) => calls)).toContain(1)
  })
})
