import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { weightedQuantile } from './quantile.ts'

describe('weightedQuantile', () => {
  it('takes the smallest value with enough weight at or below it, in any order', () => {
    const values = [30, 10, 20]
    const weights = [0.5, 0.2, 0.3]
    expect([0, 0.2, 0.21, 0.5, 0.51, 1].map((p) => weightedQuantile(values, weights, p))).toEqual([
      10, 10, 20, 20, 30, 30,
    ])
  })

  it('passes over values without weight and says NaN when nothing is left', () => {
    expect(weightedQuantile([1, 2, 3], [0, 1, 0], 0)).toBe(2)
    expect(weightedQuantile([1, 2, 3], [0, 1, 0], 1)).toBe(2)
    expect(weightedQuantile([1], [0], 0.5)).toBeNaN()
    expect(weightedQuantile(new Float64Array(0), new Float64Array(0), 0.5)).toBeNaN()
  })

  it('does not let rounding push an exact share on to the next value', () => {
    const values = Array.from({ length: 10 }, (_, i) => i + 1)
    const weights = values.map(() => 0.1)
    values.forEach((value) => {
      expect(weightedQuantile(values, weights, value / 10)).toBe(value)
    })
  })

  it('leaves less than p strictly below it and at least p at or below it', () => {
    const entry = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 9 }))
    fc.assert(
      fc.property(
        fc.array(entry, { minLength: 1, maxLength: 30 }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (entries, p) => {
          const values = entries.map(([value]) => value)
          const weights = entries.map(([, weight]) => weight)
          const total = weights.reduce((sum, weight) => sum + weight, 0)
          const quantile = weightedQuantile(values, weights, p)
          const below = entries.reduce((sum, [value, weight]) => sum + (value < quantile ? weight : 0), 0)
          const upTo = entries.reduce((sum, [value, weight]) => sum + (value <= quantile ? weight : 0), 0)
          expect(below / total).toBeLessThan(p)
          expect(upTo / total).toBeGreaterThanOrEqual(p - 1e-9)
        },
      ),
    )
  })
})
