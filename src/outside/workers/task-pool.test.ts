import { describe, expect, it } from 'vitest'
import type { Lane } from './lane.ts'
import { type RunOptions, type Settled, type TaskPool, taskPool } from './task-pool.ts'

/** A lane whose tasks are answered when the test says so; a stopped one says so too. */
class Puppet implements Lane<string, string> {
  readonly worked: string[] = []
  stopped = 0
  isClosed = false
  answer: (result: string) => void = () => undefined
  fail: (error: Error) => void = () => undefined

  run(task: string, signal: AbortSignal): Promise<string> {
    this.worked.push(task)
    return new Promise((resolve, reject) => {
      const stop = (): void => {
        this.stopped += 1
        reject(signal.reason)
      }
      signal.addEventListener('abort', stop)
      this.answer = (result) => {
        signal.removeEventListener('abort', stop)
        resolve(result)
      }
      this.fail = reject
    })
  }

  async close(): Promise<void> {
    this.isClosed = true
  }
}

function puppetPool(size: number): { pool: TaskPool<string, string>; lanes: Puppet[] } {
  const lanes: Puppet[] = []
  const spawn = (): Puppet => {
    const lane = new Puppet()
    lanes.push(lane)
    return lane
  }
  return { pool: taskPool({ size, spawn, here: (task) => task.toUpperCase() }), lanes }
}

const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0))

/** Reads a run to its end in the background. */
function reading(
  pool: TaskPool<string, string>,
  tasks: readonly string[],
  options?: RunOptions<string>,
): { readonly told: Settled<string>[]; readonly end: Promise<string> } {
  const told: Settled<string>[] = []
  const read = async (): Promise<string> => {
    for await (const settled of pool.run(tasks, options)) told.push(settled)
    return 'read to the end'
  }
  return { told, end: read().catch((reason: unknown) => (reason as Error).name) }
}

describe('taskPool', () => {
  it('tells answers in the order in which they come, with the place of their tasks', async () => {
    const { pool, lanes } = puppetPool(2)
    const { told, end } = reading(pool, ['a', 'b', 'c'])
    await turn()
    lanes[1]!.answer('B')
    await turn()
    expect(lanes[1]!.worked).toEqual(['b', 'c'])
    lanes[1]!.answer('C')
    lanes[0]!.answer('A')
    expect(await end).toBe('read to the end')
    expect(told.map(({ index }) => index)).toEqual([1, expect.any(Number), expect.any(Number)])
    expect([...told].sort((a, b) => a.index - b.index)).toEqual([
      { index: 0, result: 'A' },
      { index: 1, result: 'B' },
      { index: 2, result: 'C' },
    ])
  })

  it('loses no other task to one that fails', async () => {
    const { pool, lanes } = puppetPool(1)
    const { told, end } = reading(pool, ['a', 'b'])
    await turn()
    lanes[0]!.fail(new Error('broken'))
    await turn()
    lanes[0]!.answer('B')
    await end
    expect(told).toEqual([
      { index: 0, error: new Error('broken') },
      { index: 1, result: 'B' },
    ])
  })

  it('stops running tasks and begins no other when it is told to, and can be used again', async () => {
    const { pool, lanes } = puppetPool(2)
    const stop = new AbortController()
    const { told, end } = reading(pool, ['a', 'b', 'c', 'd'], { signal: stop.signal })
    await turn()
    lanes[0]!.answer('A')
    await turn()
    stop.abort()
    expect(await end).toBe('AbortError')
    expect(told).toEqual([{ index: 0, result: 'A' }])
    expect(lanes.map(({ stopped }) => stopped)).toEqual([1, 1])
    expect(lanes.flatMap(({ worked }) => worked)).toEqual(['a', 'c', 'b'])
    const again = reading(pool, ['e'])
    await turn()
    lanes[0]!.answer('E')
    expect(await again.end).toBe('read to the end')
    expect(again.told).toEqual([{ index: 0, result: 'E' }])
  })

  it('still tells what was answered in the moment in which it was stopped', async () => {
    const { pool, lanes } = puppetPool(2)
    const stop = new AbortController()
    const { told, end } = reading(pool, ['a', 'b'], { signal: stop.signal })
    await turn()
    lanes[1]!.answer('B')
    stop.abort()
    expect(await end).toBe('AbortError')
    expect(told).toEqual([{ index: 1, result: 'B' }])
  })

  it('works on nothing when it was stopped before it began', async () => {
    const { pool, lanes } = puppetPool(1)
    const { told, end } = reading(pool, ['a'], { signal: AbortSignal.abort() })
    expect(await end).toBe('AbortError')
    expect(told).toEqual([])
    expect(lanes[0]!.worked).toEqual([])
  })

  it('stops the rest when the reader leaves', async () => {
    const { pool, lanes } = puppetPool(2)
    const leave = async (): Promise<void> => {
      for await (const _settled of pool.run(['a', 'b', 'c'])) break
    }
    const left = leave()
    await turn()
    lanes[0]!.answer('A')
    await left
    expect(lanes.map(({ stopped }) => stopped)).toEqual([1, 1])
  })

  it('says how far it is, failures counted', async () => {
    const { pool, lanes } = puppetPool(1)
    const heard: unknown[] = []
    const { end } = reading(pool, ['a', 'b'], { onProgress: (progress) => heard.push(progress) })
    await turn()
    lanes[0]!.fail(new Error('broken'))
    await turn()
    lanes[0]!.answer('B')
    await end
    expect(heard).toEqual([
      { done: 1, of: 2 },
      { done: 2, of: 2 },
    ])
  })

  it('works here with no lanes, in the order of the groups, and lets a signal through between tasks', async () => {
    const stop = new AbortController()
    const { pool } = puppetPool(0)
    const groupOf = (task: string): string => task.charAt(0)
    const all = reading(pool, ['a1', 'b1', 'a2', 'b2'], { groupOf })
    await all.end
    expect(all.told.map((settled) => 'result' in settled && settled.result)).toEqual(['A1', 'A2', 'B1', 'B2'])
    const cut = reading(pool, ['a1', 'b1', 'a2', 'b2'], {
      groupOf,
      signal: stop.signal,
      onProgress: () => setTimeout(() => stop.abort(), 0),
    })
    expect(await cut.end).toBe('AbortError')
    expect(cut.told.length).toBeLessThan(4)
  })

  it('opens as many lanes as it is large and closes them all', async () => {
    const { pool, lanes } = puppetPool(3)
    await pool.close()
    expect(lanes.map(({ isClosed }) => isClosed)).toEqual([true, true, true])
  })
})
