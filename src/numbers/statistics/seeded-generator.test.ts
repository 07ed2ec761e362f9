import { describe, expect, it } from 'vitest'
import { seededGenerator } from './seeded-generator.ts'

const take = (seed: number, count: number): number[] => Array.from({ length: count }, seededGenerator(seed))

// Upper 0.1 % points of chi-square: NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.4.
const CHI_SQUARE_99 = 148.23
// Wilson and Hilferty’s approximation (1931) of the same point for 63 degrees of freedom.
const CHI_SQUARE_63 = 63 * (1 - 2 / (9 * 63) + 3.09 * Math.sqrt(2 / (9 * 63))) ** 3

function chiSquare(counts: number[], total: number): number {
  const expected = total / counts.length
  return counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0)
}

describe('seededGenerator', () => {
  it('repeats itself and differs by seed, also by fractions and beyond 32 bits', () => {
    expect(take(7, 5)).toEqual(take(7, 5))
    const firsts = [0, 1, 2, 0.5, -1, 2 ** 32, 2 ** 32 + 1].map((seed) => take(seed, 1)[0])
    expect(new Set(firsts).size).toBe(firsts.length)
  })

  it('gives the same numbers on every machine', () => {
    expect(take(1, 3)).toEqual([0.6332565402745659, 0.03220049040445916, 0.052724598058384364])
  })

  it('fills 100 equal intervals evenly', () => {
    for (const seed of [1, 2, 3]) {
      const counts = new Array<number>(100).fill(0)
      for (const value of take(seed, 100_000)) counts[Math.floor(value * 100)]!++
      expect(chiSquare(counts, 100_000)).toBeLessThan(CHI_SQUARE_99)
    }
  })

  it('has no memory from one number to the next, nor from one seed to the next', () => {
    const pairs = new Array<number>(64).fill(0)
    const seeds = new Array<number>(64).fill(0)
    const random = seededGenerator(4)
    for (let i = 0; i < 64_000; i++) {
      pairs[8 * Math.floor(random() * 8) + Math.floor(random() * 8)]!++
      seeds[Math.floor(take(i, 1)[0]! * 64)]!++
    }
    expect(chiSquare(pairs, 64_000)).toBeLessThan(CHI_SQUARE_63)
    expect(chiSquare(seeds, 64_000)).toBeLessThan(CHI_SQUARE_63)
  })

  it('has the mean and variance of the uniform distribution and stays below 1', () => {
    const values = take(5, 200_000)
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length
    // Four standard errors.
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / values.length))
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / values.length))
    expect(values.every((value) => value >= 0 && value < 1)).toBe(true)
  })
})
