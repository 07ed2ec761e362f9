import { describe, expect, it } from 'vitest'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { indexFromScore, scoreDifferential } from './index-from-score.ts'
import { USUAL_ABOVE_BEST_STROKES } from './said-settings.ts'

describe('scoreDifferential', () => {
  // Worked by hand from rule 5.1a of the Rules of Handicapping: 113 / 128 × (85 − 71.5) = 11.918.
  it('is the rule’s', () => expect(scoreDifferential(85, 71.5, 128)).toBe(11.9))
  // Rule 5.1b's nine holes as the published reply of a handicap authority works it: 45 on 33.7 / 113 is 11.3.
  it('agrees with a worked example', () => expect(scoreDifferential(45, 33.7, 113)).toBe(11.3))
})

describe('indexFromScore', () => {
  it('takes the rating and the better rounds off, and stays within what indices there are', () => {
    expect(indexFromScore(75)).toBe(0)
    expect(indexFromScore(93)).toBe(18)
    expect(indexFromScore(180)).toBe(54)
    expect(indexFromScore(56)).toBe(-5)
  })

  it('takes off what the best 8 of 20 rounds are better than all, for rounds that spread by 3.2 strokes', () => {
    const uniform = seededGenerator(7)
    let sum = 0
    const records = 4000
    for (let record = 0; record < records; record += 1) {
      const scores = Array.from({ length: 20 }, () => 3.2 * normalQuantile(uniform())).sort((a, b) => a - b)
      sum += scores.slice(0, 8).reduce((total, score) => total + score, 0) / 8
    }
    expect(-sum / records).toBeCloseTo(USUAL_ABOVE_BEST_STROKES, 1)
  })
})
