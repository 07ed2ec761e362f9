import { describe, expect, it } from 'vitest'
import { feetToMetres, metresToFeet, metresToYards, mphToMetresPerSecond, yardsToMetres } from './units.ts'

describe('units', () => {
  // International yard and pound agreement of 1959: 1 yd = 0.9144 m, 1 ft = 0.3048 m, 1 mile = 1609.344 m, all exact.
  it('agrees with the exact definitions', () => {
    expect(yardsToMetres(100)).toBeCloseTo(91.44, 12)
    expect(metresToYards(91.44)).toBeCloseTo(100, 12)
    expect(feetToMetres(10)).toBeCloseTo(3.048, 12)
    expect(metresToFeet(3.048)).toBeCloseTo(10, 12)
    expect(mphToMetresPerSecond(1)).toBeCloseTo(1609.344 / 3600, 12)
  })
})
