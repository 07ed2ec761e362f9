import { describe, expect, it } from 'vitest'
import { type WorkerPort, workerLane } from '#outside/workers/worker-lane.ts'
import { type LatestAnswer, latestAnswer } from './latest-answer.ts'
import type { Answered, Question } from './questions.ts'

/** A worker that answers when it is told to. */
interface Puppet extends WorkerPort {
  readonly asked: Question[]
  isStopped: boolean
}

/** Asks workers that are puppets, and keeps what it is told. */
function asking(
  isInterrupted = false,
  isNear?: (older: Question, newer: Question) => boolean,
): { latest: LatestAnswer; all: Puppet[]; told: Answered[]; late: boolean[] } {
  const all: Puppet[] = []
  const told: Answered[] = []
  const late: boolean[] = []
  const spawn = (): WorkerPort => {
    const puppet: Puppet = {
      asked: [],
      isStopped: false,
      onmessage: null,
      onerror: null,
      postMessage: ({ task }) => puppet.asked.push(task as Question),
      terminate: () => {
        puppet.isStopped = true
      },
    }
    all.push(puppet)
    return puppet
  }
  return {
    latest: latestAnswer(
      workerLane(spawn),
      (answered, isLate) => {
        told.push(answered)
        late.push(isLate)
      },
      isInterrupted,
      isNear,
    ),
    all,
    told,
    late,
  }
}

const question = (club: string): Question => ({ kind: 'finishes', club }) as unknown as Question
const clubOf = (asked: Question | undefined): unknown => (asked as { club?: string } | undefined)?.club
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0))

async function answerLast(puppet: Puppet): Promise<void> {
  puppet.onmessage?.({ data: { result: { finishes: { club: clubOf(puppet.asked.at(-1)) } } } })
  await turn()
}

describe('latestAnswer', () => {
  it('tells the answer to a question', async () => {
    const { latest, all, told } = asking()
    latest.ask(question('driver'))
    await answerLast(all[0]!)
    expect(told).toEqual([{ finishes: { club: 'driver' } }])
  })

  it('asks the newest of the questions that came while it was busy, and never tells the older answers', async () => {
    const { latest, all, told } = asking()
    for (const club of ['driver', '5-wood', '7-iron']) latest.ask(question(club))
    await answerLast(all[0]!)
    expect(told).toHaveLength(0)
    expect(all[0]!.asked.map(clubOf)).toEqual(['driver', '7-iron'])
    await answerLast(all[0]!)
    expect(told).toEqual([{ finishes: { club: '7-iron' } }])
    expect(all).toHaveLength(1)
  })

  it('tells a near answer late when a newer question waits, so that figures follow a drag', async () => {
    const { latest, all, told, late } = asking(false, (older) => clubOf(older) !== '9-iron')
    for (const club of ['driver', '9-iron']) latest.ask(question(club))
    await answerLast(all[0]!)
    latest.ask(question('putter'))
    await answerLast(all[0]!)
    await answerLast(all[0]!)
    expect(told.map((answered) => clubOf(answered.finishes as never))).toEqual(['driver', 'putter'])
    expect(late).toEqual([true, false])
  })

  it('stops a worker that is busy with a stale question when it may be interrupted', async () => {
    const { latest, all, told } = asking(true)
    latest.ask(question('driver'))
    latest.ask(question('7-iron'))
    await turn()
    expect(all.map(({ isStopped }) => isStopped)).toEqual([true, false])
    await answerLast(all[1]!)
    expect(told).toEqual([{ finishes: { club: '7-iron' } }])
  })

  it('tells nothing once it was told to forget, and answers what is asked later', async () => {
    for (const isInterrupted of [false, true]) {
      const { latest, all, told } = asking(isInterrupted)
      latest.ask(question('driver'))
      latest.forget()
      await turn()
      expect(all[0]!.isStopped).toBe(isInterrupted)
      await answerLast(all[0]!)
      expect(told).toHaveLength(0)
      latest.ask(question('7-iron'))
      await answerLast(all.at(-1)!)
      expect(told).toEqual([{ finishes: { club: '7-iron' } }])
    }
  })

  it('says that a worker broke, and starts another for the next question', async () => {
    const { latest, all, told } = asking()
    latest.ask(question('driver'))
    all[0]!.onerror?.({ message: 'out of memory' })
    await turn()
    expect(told[0]?.fault?.message).toBe('out of memory')
    latest.ask(question('7-iron'))
    await answerLast(all[1]!)
    expect(told).toHaveLength(2)
  })

  it('stops its worker, asked or not', async () => {
    const { latest, all, told } = asking()
    latest.ask(question('driver'))
    latest.stop()
    await turn()
    expect(all[0]!.isStopped).toBe(true)
    expect(told).toHaveLength(0)
  })
})
