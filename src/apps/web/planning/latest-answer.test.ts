import { describe, expect, it } from 'vitest'
import { latestAnswer, type WorkerPort } from './latest-answer.ts'
import type { Answered, Asked, Question } from './questions.ts'

/** A worker that answers when it is told to. */
interface Puppet extends WorkerPort {
  readonly asked: Asked[]
  isStopped: boolean
}

function puppets(): { spawn: () => WorkerPort; all: Puppet[] } {
  const all: Puppet[] = []
  const spawn = (): WorkerPort => {
    const puppet: Puppet = {
      asked: [],
      isStopped: false,
      onmessage: null,
      onerror: null,
      postMessage: (asked) => puppet.asked.push(asked),
      terminate: () => {
        puppet.isStopped = true
      },
    }
    all.push(puppet)
    return puppet
  }
  return { spawn, all }
}

const question = (club: string): Question => ({ kind: 'finishes', club }) as unknown as Question
const clubOf = (asked: Asked | undefined): unknown => (asked?.question as { club?: string } | undefined)?.club

function answerLast(puppet: Puppet): void {
  puppet.onmessage?.({ data: { id: puppet.asked.at(-1)!.id } })
}

describe('latestAnswer', () => {
  it('tells the answer to a question', () => {
    const told: Answered[] = []
    const { spawn, all } = puppets()
    latestAnswer(spawn, (answered) => told.push(answered)).ask(question('driver'))
    answerLast(all[0]!)
    expect(told).toHaveLength(1)
  })

  it('asks the newest of the questions that came while it was busy, and never tells the older answers', () => {
    const told: Answered[] = []
    const { spawn, all } = puppets()
    const latest = latestAnswer(spawn, (answered) => told.push(answered))
    for (const club of ['driver', '5-wood', '7-iron']) latest.ask(question(club))
    answerLast(all[0]!)
    expect(told).toHaveLength(0)
    expect(all[0]!.asked.map(clubOf)).toEqual(['driver', '7-iron'])
    answerLast(all[0]!)
    expect(told).toHaveLength(1)
    expect(all).toHaveLength(1)
  })

  it('stops a worker that is busy with a stale question when it may be interrupted', () => {
    const told: Answered[] = []
    const { spawn, all } = puppets()
    const latest = latestAnswer(spawn, (answered) => told.push(answered), true)
    latest.ask(question('driver'))
    latest.ask(question('7-iron'))
    expect(all.map(({ isStopped }) => isStopped)).toEqual([true, false])
    answerLast(all[1]!)
    expect(told).toHaveLength(1)
  })

  it('tells nothing once it was told to forget', () => {
    const told: Answered[] = []
    const { spawn, all } = puppets()
    const latest = latestAnswer(spawn, (answered) => told.push(answered))
    latest.ask(question('driver'))
    latest.forget()
    answerLast(all[0]!)
    expect(told).toHaveLength(0)
  })

  it('says that a worker broke, and starts another for the next question', () => {
    const told: Answered[] = []
    const { spawn, all } = puppets()
    const latest = latestAnswer(spawn, (answered) => told.push(answered))
    latest.ask(question('driver'))
    all[0]!.onerror?.({ message: 'out of memory' })
    expect(told[0]?.fault?.message).toBe('out of memory')
    latest.ask(question('7-iron'))
    answerLast(all[1]!)
    expect(told).toHaveLength(2)
  })
})
