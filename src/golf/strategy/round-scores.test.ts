import { describe, expect, it } from 'vitest'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import type { Plan, PlanOption } from './plan.ts'
import { chanceOfBreaking, roundScores, winningShares } from './round-scores.ts'

const planOf = (scores: PlanOption['scores']): Pick<Plan, 'options'> => ({
  options: [{ scores } as PlanOption],
})

describe('roundScores', () => {
  it('adds up independent holes: the closed form of a sum of coins', () => {
    // Four or five on each of 18 holes: 72 and a binomial number of fives.
    const scores = roundScores(Array.from({ length: 18 }, () => planOf({ '4': 0.6, '5': 0.4 })))
    expect(scores.slice(0, 72).every((chance) => chance === 0)).toBe(true)
    expect(scores[72]).toBeCloseTo(0.6 ** 18, 14)
    expect(scores[74]).toBeCloseTo(153 * 0.4 ** 2 * 0.6 ** 16, 14)
    expect(chanceOfBreaking(scores, 73)).toBeCloseTo(0.6 ** 18, 14)
    expect(chanceOfBreaking(scores, 200)).toBeCloseTo(1, 12)
  })

  it('agrees with rounds drawn at random', () => {
    const holes = [
      { '2': 0.1, '3': 0.55, '4': 0.25, '5': 0.1 },
      { '3': 0.05, '4': 0.4, '5': 0.35, '6': 0.1, '9': 0.1 },
      { '4': 0.2, '5': 0.5, '7': 0.3 },
    ]
    const random = seededGenerator(11)
    const rounds = 50_000
    const scores = roundScores(holes.map(planOf))
    let broken = 0
    for (let round = 0; round < rounds; round++) {
      let total = 0
      for (const hole of holes) {
        let left = random()
        for (const [strokes, chance] of Object.entries(hole)) {
          left -= chance
          if (left >= 0) continue
          total += Number(strokes)
          break
        }
      }
      if (total < 13) broken += 1
    }
    const chance = chanceOfBreaking(scores, 13)
    expect(chance).toBeGreaterThan(0.3)
    expect(Math.abs(broken / rounds - chance)).toBeLessThan(3.5 * Math.sqrt((chance * (1 - chance)) / rounds))
  })
})

describe('winningShares', () => {
  it('lets a stroke of handicap undo a stroke', () => {
    const scratch = roundScores([planOf({ '4': 0.5, '5': 0.5 })])
    const behind = roundScores([planOf({ '5': 0.5, '6': 0.5 })])
    // Ahead in three of four pairs, level in the fourth.
    expect(winningShares([scratch, behind])).toEqual([0.875, 0.125])
    expect(winningShares([scratch, behind], [0, 1])).toEqual([0.5, 0.5])
    expect(winningShares([scratch, behind], [-1, 0])).toEqual([0.5, 0.5])
    expect(winningShares([scratch])).toEqual([1])
  })
})
