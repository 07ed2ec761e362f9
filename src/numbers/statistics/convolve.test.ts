import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { convolve } from './convolve.ts'

const mean = (chances: readonly number[]): number =>
  chances.reduce((sum, chance, value) => sum + chance * value, 0)
const variance = (chances: readonly number[]): number =>
  chances.reduce((sum, chance, value) => sum + chance * (value - mean(chances)) ** 2, 0)

describe('convolve', () => {
  it('gives the binomial distribution for trials of one kind', () => {
    // Closed form: C(n, k) p^k (1 − p)^(n − k), here n = 18 and p = 0.3.
    const n = 18
    const p = 0.3
    let choose = 1
    for (const [k, chance] of convolve(Array.from({ length: n }, () => [1 - p, p])).entries()) {
      expect(chance).toBeCloseTo(choose * p ** k * (1 - p) ** (n - k), 14)
      choose = (choose * (n - k)) / (k + 1)
    }
  })

  it('counts two dice', () => {
    const die = [0, 1, 1, 1, 1, 1, 1].map((ways) => ways / 6)
    const ways = convolve([die, die]).map((chance) => Math.round(chance * 36))
    expect(ways).toEqual([0, 0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1])
  })

  it('is surely nothing for no numbers', () => {
    expect(convolve([])).toEqual([1])
  })

  it('adds means and variances', () => {
    const distribution = fc
      .array(fc.integer({ min: 0, max: 50 }), { minLength: 1, maxLength: 9 })
      .filter((weights) => weights.some((weight) => weight > 0))
      .map((weights) => weights.map((weight) => weight / weights.reduce((sum, one) => sum + one, 0)))
    fc.assert(
      fc.property(fc.array(distribution, { maxLength: 6 }), (distributions) => {
        const sum = convolve(distributions)
        expect(sum.reduce((total, chance) => total + chance, 0)).toBeCloseTo(1, 12)
        expect(mean(sum)).toBeCloseTo(
          distributions.reduce((total, one) => total + mean(one), 0),
          9,
        )
        expect(variance(sum)).toBeCloseTo(
          distributions.reduce((total, one) => total + variance(one), 0),
          8,
        )
      }),
    )
  })
})
