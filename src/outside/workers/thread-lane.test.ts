import { afterEach, describe, expect, it } from 'vitest'
import type { Lane } from './lane.ts'
import { taskPool } from './task-pool.ts'
import type { fixtureWork } from './thread-lane.fixture.ts'
import { threadLane } from './thread-lane.ts'

type Answer = ReturnType<typeof fixtureWork>

const work = { entry: new URL('./thread-lane.fixture.ts', import.meta.url), name: 'fixtureWork' }
const open: Lane<number, Answer>[] = []
const lane = (): Lane<number, Answer> => {
  const opened = threadLane<number, Answer>(work)
  open.push(opened)
  return opened
}
afterEach(async () => {
  for (const opened of open.splice(0)) await opened.close()
})
const never = new AbortController().signal

describe('threadLane', () => {
  it('works in one thread of its own that keeps its state between tasks', async () => {
    const one = lane()
    const first = await one.run(5, never)
    const second = await one.run(6, never)
    expect(first).toMatchObject({ number: 5, calls: 1 })
    expect(second).toEqual({ number: 6, calls: 2, thread: first.thread })
    expect((await lane().run(7, never)).thread).not.toBe(first.thread)
  })

  it('tells what the work threw, and goes on', async () => {
    const one = lane()
    await expect(one.run(0, never)).rejects.toThrow('nothing to work on')
    expect(await one.run(5, never)).toMatchObject({ number: 5 })
  })

  it('ends a task that would never end by itself, and works again in a fresh thread', async () => {
    const one = lane()
    const before = await one.run(5, never)
    const stop = new AbortController()
    const endless = one.run(-1, stop.signal)
    // Longer than it takes to hand the task over, so that the thread is in the middle of it.
    setTimeout(() => stop.abort(), 50)
    await expect(endless).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }))
    const after = await one.run(6, never)
    expect(after).toMatchObject({ number: 6, calls: 1 })
    expect(after.thread).not.toBe(before.thread)
  })

  it('ends a task that waits for its thread to start', async () => {
    const stop = new AbortController()
    const waiting = lane().run(-1, stop.signal)
    stop.abort()
    await expect(waiting).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }))
    await expect(lane().run(5, stop.signal)).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }))
  })

  it('stops a whole pool in the middle of endless work, with the answers at hand told', async () => {
    const pool = taskPool<number, Answer>({ size: 2, spawn: lane, here: () => expect.fail() })
    const stop = new AbortController()
    const told: number[] = []
    const read = async (): Promise<void> => {
      for await (const settled of pool.run([-1, 5, -2, 6], { signal: stop.signal })) {
        told.push(settled.index)
        stop.abort()
      }
    }
    await expect(read()).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }))
    expect(told).toEqual([1])
  })
})
