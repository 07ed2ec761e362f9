import { describe, expect, it } from 'vitest'
import type { FormatPart, Plan } from '#golf/strategy/plan.ts'
import { costHeading, priceWords } from '../words.ts'
import { formatLines, receivedWord, standsWord } from './format-lines.ts'

const part: FormatPart = {
  aim: 'the hole',
  played: 0,
  received: 1,
  value: 0.541,
  low: 0.5,
  high: 0.58,
  fewest_strokes: {
    club: '5-wood',
    shape: 'stock',
    aim: { heading_deg: 0, offset_m: 0, at_m: 0, start_deg: 0 },
    value: 0.53,
  },
  gain: 0,
  gain_here: 0,
  changes: 'nothing',
  manner: null,
  strokes_given_up: 0,
  match: { win: 0.34, halve: 0.4, lose: 0.26 },
  notes: ['Ebb is taken to play the plan for the fewest strokes.'],
  sentence: 'The format changes nothing here.',
}

describe('a format on the desk', () => {
  it('says what changes, what it is worth, and how the hole goes against the opponent', () => {
    expect(formatLines('match', part)).toEqual([
      'The format changes nothing here.',
      'Expected: 0.54 of the hole, between 0.50 and 0.58 of the hole.',
      'The hole is won 34, halved 40 and lost 26 times in 100.',
      'Ebb is taken to play the plan for the fewest strokes.',
    ])
    const target = { ...part, aim: '4 or better', value: 0.31, low: 0.31, high: 0.31, match: null, notes: [] }
    expect(formatLines('at-most:4', target)[1]).toBe('4 or better: 31 in 100.')
    expect(formatLines('strokes', part)).toEqual([])
  })

  it('counts costs in the unit that is played for', () => {
    const plan = (objective: Plan['situation']['objective'], format: FormatPart | null) =>
      ({ situation: { objective }, format }) as Plan
    expect(priceWords(plan('strokes', null), 0.123)).toBe('0.12')
    expect(priceWords(plan('at-most:4', part), 0.05)).toBe('5 in 100')
    expect(priceWords(plan('points', part), 0.04)).toBe('0.04 points')
    expect(costHeading(plan('strokes', null))).toBe('cost in strokes')
    expect(costHeading(plan('match', part))).toBe('cost in the hole')
  })

  it('names strokes received and the state of a match as the trade does', () => {
    expect([2, 0, -1].map(receivedWord)).toEqual(['2 received', 'none', '1 given'])
    expect([2, 0, -1].map(standsWord)).toEqual(['2 up', 'all square', '1 down'])
  })
})
