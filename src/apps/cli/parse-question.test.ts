import { describe, expect, it } from 'vitest'
import { parseQuestion } from './parse-question.ts'

const asked = { player: ['p.json'], hole: '7', flips: true }

describe('parseQuestion', () => {
  it('knows a club by the words in which a plan prints it', () => {
    for (const club of ['pitching-wedge', 'pitching wedge', ' Pitching  Wedge '])
      expect(parseQuestion({ ...asked, club }).club).toBe('pitching-wedge')
  })

  it('refuses a wind that is none before any hole is looked at', () => {
    const wind = 'north:7'
    expect(() => parseQuestion({ ...asked, hole: 'all', wind })).toThrow(
      expect.objectContaining({ code: 'MAR-DAY-006' }),
    )
    expect(parseQuestion({ ...asked, wind: 'into:7' }).wind).toBe('into:7')
  })
})
