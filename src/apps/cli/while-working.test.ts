import { describe, expect, it } from 'vitest'
import { whileWorking } from './while-working.ts'

function heard(isWatched: boolean, isQuiet: boolean, work: () => number): { said: string[]; result: number } {
  const said: string[] = []
  const machine = { isWatched, err: (text: string): void => void said.push(text) }
  return { result: whileWorking('Planning hole 7', isQuiet, machine, work), said }
}

describe('whileWorking', () => {
  it('tells a person what goes on, and takes it away again', () => {
    const { said, result } = heard(true, false, () => 7)
    expect(result).toBe(7)
    expect(said).toEqual(['Planning hole 7 …', '\r\u001b[K'])
  })

  it('takes it away before a failure is told', () => {
    const said: string[] = []
    const machine = { isWatched: true, err: (text: string): void => void said.push(text) }
    const fail = (): never => {
      throw new Error('no green')
    }
    expect(() => whileWorking('Planning', false, machine, fail)).toThrow('no green')
    expect(said).toHaveLength(2)
  })

  it('says nothing where nobody watches or quiet was asked for', () => {
    expect(heard(false, false, () => 1).said).toEqual([])
    expect(heard(true, true, () => 1).said).toEqual([])
  })
})
