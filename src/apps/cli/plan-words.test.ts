import { describe, expect, it } from 'vitest'
import type { PlanOption } from '#golf/strategy/plan.ts'
import { aimText, flipLines, leaveText, shareText } from './plan-words.ts'
import { lengthText, sideText } from './units-of-the-reader.ts'

describe('words of a plan', () => {
  it('print shares in per cent, a small one as such', () => {
    expect([0, 0.004, 0.006, 0.014, 0.444, 1].map(shareText)).toEqual(['–', '–', '<1', '1', '44', '100'])
  })

  it('round lengths once, in the unit of the reader', () => {
    expect(lengthText(182.88, 'yards')).toBe('200 yd')
    expect(lengthText(182.88, 'metres')).toBe('183 m')
    expect(lengthText(182.88, 'yards', 5)).toBe('200 yd')
    expect(lengthText(-0.3, 'metres')).toBe('0 m')
    expect([-10, 0.2, 10].map((metres) => sideText(metres, 'yards'))).toEqual([
      '11 left',
      'on the line',
      '11 right',
    ])
  })

  it('say aim and leave as a player would', () => {
    const option = {
      total_m: 182.88,
      aim: { heading_deg: 2.866, offset_m: 9.144, at_m: 182.88, start_deg: 2 },
      leave_m: { p10: 91.44, p50: 100.584, p90: 137.16 },
    } as PlanOption
    // asin(10/200) = 2.866°.
    expect(aimText(option, { words: 'hole line', headingDegrees: 0 }, 'yards')).toBe('10 right at 200 yd')
    expect(aimText(option, { words: 'pin', headingDegrees: 5.732 }, 'yards')).toBe(
      '10 left of the pin, 200 yd on',
    )
    expect(aimText(option, { words: 'pin', headingDegrees: 2.866 }, 'yards')).toBe('at the pin, 200 yd on')
    expect(leaveText(option, 'yards')).toBe('110 (100 to 150)')
  })

  it('list what changes the plan, and in one line what does not', () => {
    const flips = [
      { what: 'wind', unit: 'm/s', direction: 'into', at: 4.4704, club: 'driver' },
      { what: 'firmness', unit: '×', direction: 'softer', at: 0.7, club: '5-wood' },
      { what: 'hazard:water-left', unit: 'm', direction: 'further', at: 9.144, club: 'driver' },
      { what: 'spread', unit: '×', direction: 'wider', at: null, club: null },
      { what: 'wind', unit: 'm/s', direction: 'behind', at: null, club: null },
    ]
    expect(flipLines(flips, 'yards')).toEqual([
      '10 mph more wind into: driver',
      'softer ground, 0.70 ×: 5-wood',
      'water left 10 yd further: driver',
      'nothing in the sensible range of: wider spread, wind behind',
    ])
  })
})
