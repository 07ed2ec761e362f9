import { describe, expect, it } from 'vitest'
import { costText } from './cost-text.ts'

describe('costText', () => {
  it('says a cost to a hundredth, and none that rounds to none', () => {
    expect([0, 0.004, 0.005, 0.038, 1.2, -0.3].map(costText)).toEqual([
      '–',
      '–',
      '+0.01',
      '+0.04',
      '+1.20',
      '−0.30',
    ])
  })
})
