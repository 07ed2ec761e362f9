import { describe, expect, it } from 'vitest'
import { type ServingPort, serveTasks } from './serve-tasks.ts'
import { type WorkerPort, workerLane } from './worker-lane.ts'

/** A worker of which the test sees both ends; its module is `work`, answered when the test says so. */
interface Puppet extends WorkerPort {
  isStopped: boolean
  answer(): void
}

function puppets(work: (task: number) => number): { spawn: () => WorkerPort; all: Puppet[] } {
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
      isStopped: false,
      onmessage: null,
      onerror: null,
      postMessage: (task) => {
        asked = task
      },
      terminate: () => {
        puppet.isStopped = true
      },
      answer: () => hear({ data: asked as never }),
    }
    all.push(puppet)
    return puppet
  }
  return { spawn, all }
}

const never = new AbortController().signal
const double = (task: number): number => {
  if (task === 0) throw new RangeError('nothing to work on')
  return 2 * task
}

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

  it('stops its worker in the middle of a task, and asks a fresh one the next', async () => {
    const { spawn, all } = puppets(double)
    const lane = workerLane<number, number>(spawn)
    const stop = new AbortController()
    const stopped = lane.run(4, stop.signal)
    stop.abort()
    await expect(stopped).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }))
    const answered = lane.run(5, never)
    expect(all.map(({ isStopped }) => isStopped)).toEqual([true, false])
    all[1]!.answer()
    expect(await answered).toBe(10)
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
    expect(all[0]!.isStopped).toBe(true)
  })
})
