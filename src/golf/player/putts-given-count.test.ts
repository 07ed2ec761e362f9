import { describe, expect, it } from 'vitest'
import { priorPutting } from './prior-near-green.ts'
import { puttGivenOutcome } from './putt-given-outcome.ts'
import { puttingValues } from './putting-values.ts'
import { struckGivenCount } from './putts-given-count.ts'

// By the law of total expectation the mean over all numbers of putts is nought: no outcome is favoured.

describe('putts of which only the number is known', () => {
  it.each([
    [1.5, 2],
    [4, 15],
    [9, 15],
    [18, 30],
  ])('from %f m by a golfer of index %f were on average struck as expected', (metres, index) => {
    const putting = priorPutting(index)
    const shares = puttingValues({ putting }).shares(metres)
    const mean = [1, 2, 3].reduce(
      (sum, count) => sum + (shares[count - 1] ?? 0) * (struckGivenCount(putting, metres, count) ?? 0),
      0,
    )
    // The table of shares and the strokes here are two quadratures of one thing.
    expect(Math.abs(mean)).toBeLessThan(0.01)
  })

  it('one putt is as a holed putt, three were struck worse than two, and that is not all of what they cost', () => {
    const putting = priorPutting(15)
    const [one, two, three] = [1, 2, 3].map((count) => struckGivenCount(putting, 9, count) ?? Number.NaN)
    const { expected, asStruck } = puttGivenOutcome(putting, 9, null)
    expect(one).toBeCloseTo((asStruck ?? 0) - expected, 12)
    expect(one).toBeLessThan(0)
    expect(two).toBeGreaterThan(one as number)
    expect(three).toBeGreaterThan(two as number)
    expect(three).toBeLessThan(3 - expected)
  })
})
