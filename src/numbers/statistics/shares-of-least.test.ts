import { describe, expect, it } from 'vitest'
import { seededGenerator } from './seeded-generator.ts'
import { sharesOfLeast } from './shares-of-least.ts'

describe('sharesOfLeast', () => {
  it('divides evenly between equals', () => {
    const die = [0, 1, 1, 1, 1, 1, 1].map((ways) => ways / 6)
    for (const count of [1, 2, 3, 7])
      for (const share of sharesOfLeast(Array.from({ length: count }, () => die)))
        expect(share).toBeCloseTo(1 / count, 14)
  })

  it('follows a closed form for coins', () => {
    // Two numbers that are 0 with chances p and q, else 1: alone at 0 is p(1 − q), together at 0 pq, together at 1 the rest.
    const [p, q] = [0.7, 0.2]
    const [first, second] = sharesOfLeast([
      [p, 1 - p],
      [q, 1 - q],
    ]) as [number, number]
    expect(first).toBeCloseTo(p * (1 - q) + (p * q + (1 - p) * (1 - q)) / 2, 14)
    expect(first + second).toBeCloseTo(1, 14)
  })

  it('agrees with numbers drawn at random, whatever their lengths', () => {
    const distributions = [
      [0, 0.1, 0.2, 0.4, 0.3],
      [0, 0, 0.5, 0.5],
      [0, 0.05, 0, 0.2, 0.3, 0.45],
    ]
    const random = seededGenerator(7)
    const rounds = 100_000
    const wins = distributions.map(() => 0)
    for (let round = 0; round < rounds; round++) {
      const drawn = distributions.map((chances) => {
        const at = random()
        return chances.findIndex((_, value) => at < cumulative(chances, value))
      })
      const least = Math.min(...drawn)
      const tied = drawn.filter((one) => one === least).length
      for (const [player, one] of drawn.entries())
        if (one === least) wins[player] = (wins[player] as number) + 1 / tied
    }
    for (const [player, share] of sharesOfLeast(distributions).entries()) {
      // A share of a win varies no more than a whole one.
      const standardError = Math.sqrt((share * (1 - share)) / rounds)
      expect(Math.abs((wins[player] as number) / rounds - share)).toBeLessThan(3.5 * standardError)
    }
  })
})

function cumulative(chances: readonly number[], most: number): number {
  return chances.slice(0, most + 1).reduce((sum, chance) => sum + chance, 0)
}
