import { afterEach, describe, expect, it, vi } from 'vitest'
import { type ServingPort, serveTasks } from './serve-tasks.ts'
import { type WorkerPort, workerLane } from './worker-lane.ts'

/** A worker of which the test sees both ends; its module is `work`, answered when the test says so. */
interface Puppet extends WorkerPort {
  isEnded: boolean
  answer(): void
}

type Work = (task: number, lookUp: () => void) => number

function puppets(work: Work): { spawn: () => WorkerPort; all: Puppet[] } {
  const all: Puppet[] = []
  const spawn = (): WorkerPort => {
    let hear: (event: { data: never }) => void = () => undefined
    const inside: ServingPort = {
      addEventListener: (_type, listener) => {
        hear = listener
      },
      postMessage: (data) => puppet.onmessage?.({ data }),
    }
    serveTasks(inside, work)
    let asked: unknown = null
    const puppet: Puppet = {
      isEnded: false,
      onmessage: null,
      onerror: null,
      postMessage: (task) => {
        asked = task
      },
      terminate: () => {
        puppet.isEnded = true
      },
      answer: () => hear({ data: asked as never }),
    }
    all.push(puppet)
    return puppet
  }
  return { spawn, all }
}

const never = new AbortController().signal
const double: Work = (task, lookUp) => {
  lookUp()
  if (task === 0) throw new RangeError('nothing to work on')
  return 2 * task
}
afterEach(() => {
  vi.useRealTimers()
})

describe('workerLane', () => {
  it('asks one worker again and again', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn)
    for (const task of [4, 5]) {
      const answered = lane.run(task, never)
      all[0]!.answer()
      expect(await answered).toBe(2 * task)
    }
    expect(all).toHaveLength(1)
  })

  it('tells what the work threw, and keeps its worker', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn)
    const failed = lane.run(0, never)
    all[0]!.answer()
    await expect(failed).rejects.toThrow('nothing to work on')
    const answered = lane.run(4, never)
    all[0]!.answer()
    expect(await answered).toBe(8)
  })

  it('says that a worker broke, and asks a fresh one the next', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn)
    const broken = lane.run(4, never)
    all[0]!.onerror?.({ message: 'out of memory' })
    await expect(broken).rejects.toThrow('out of memory')
    const answered = lane.run(5, never)
    all[1]!.answer()
    expect(await answered).toBe(10)
  })

  it('ends its worker when it is closed', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn)
    const answered = lane.run(4, never)
    all[0]!.answer()
    await answered
    await lane.close()
    expect(all[0]!.isEnded).toBe(true)
  })
})

describe('stopping a task of a workerLane', () => {
  const aborted = expect.objectContaining({ name: 'AbortError' })

  it('ends its worker at once where memory cannot be shared, and asks a fresh one the next', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn, false)
    const stop = new AbortController()
    const stopped = lane.run(4, stop.signal)
    stop.abort()
    // Before anything is waited for: no patience is had with a worker that cannot be asked.
    expect(all[0]!.isEnded).toBe(true)
    await expect(stopped).rejects.toThrow(aborted)
    const answered = lane.run(5, never)
    expect(all.map(({ isEnded }) => isEnded)).toEqual([true, false])
    all[1]!.answer()
    expect(await answered).toBe(10)
  })

  it('asks its worker to stop where memory can be shared, and keeps it for the next', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn, true)
    const stop = new AbortController()
    const stopped = lane.run(4, stop.signal)
    stop.abort()
    all[0]!.answer()
    await expect(stopped).rejects.toThrow(aborted)
    const answered = lane.run(5, never)
    // Said before it is waited for: a second worker would never be made to answer.
    expect(all.map(({ isEnded }) => isEnded)).toEqual([false])
    all[0]!.answer()
    expect(await answered).toBe(10)
  })

  it('still tells an answer that was there before the worker looked up', async () => {
    const { spawn, all } = puppets((task) => 2 * task)
    const stop = new AbortController()
    const answered = workerLane<number, number>(spawn, true).run(4, stop.signal)
    stop.abort()
    all[0]!.answer()
    expect(await answered).toBe(8)
  })

  it('ends a worker that does not look up, once patience is over, and never frees it to go on', async () => {
    vi.useFakeTimers()
    let lookUp: () => void = () => undefined
    const { spawn, all } = puppets((task, look) => {
      lookUp = look
      return task
    })
    const lane = workerLane<number, number>(spawn, true)
    const first = lane.run(4, never)
    all[0]!.answer()
    await first
    const stop = new AbortController()
    const stopped = lane.run(4, stop.signal)
    stop.abort()
    const heard = expect(stopped).rejects.toThrow(aborted)
    expect(all[0]!.isEnded).toBe(false)
    await vi.runAllTimersAsync()
    expect(all[0]!.isEnded).toBe(true)
    await heard
    void lane.run(5, never)
    expect(all).toHaveLength(2)
    expect(lookUp).toThrow('stopped')
  })
})
