import { describe, expect, it } from 'vitest'
import { matchStakes } from './match-stakes.ts'

describe('matchStakes', () => {
  it('is the hole itself when it is the last and the match is level', () => {
    expect(matchStakes(0, [])).toEqual({ win: 1, halve: 0.5, lose: 0 })
  })

  it('asks only for a half of a player who is one up on the last hole', () => {
    expect(matchStakes(1, [])).toEqual({ win: 1, halve: 1, lose: 0.5 })
    expect(matchStakes(-1, [])).toEqual({ win: 0.5, halve: 0, lose: 0 })
    // Dormie: two up with two to play.
    expect(matchStakes(2, [{ win: 0.2, halve: 0.3, lose: 0.5 }])).toEqual({
      win: 1,
      halve: 1,
      lose: 0.5 * 0.5 + 0.2 + 0.3,
    })
  })

  it('is worth nothing to play on when a match is over', () => {
    expect(matchStakes(4, [{ win: 0.2, halve: 0.3, lose: 0.5 }])).toEqual({ win: 1, halve: 1, lose: 1 })
  })

  it('follows the closed form of even holes without halves: the binomial distribution', () => {
    // Level with n even holes to come: won with more than half of them, halved with half.
    const n = 6
    const even = Array.from({ length: n }, () => ({ win: 0.5, halve: 0, lose: 0.5 }))
    const { win, halve, lose } = matchStakes(0, even)
    expect(halve).toBeCloseTo(0.5, 12)
    // One up: at least 3 of 6 wins it; C(6,3..6) = 20 + 15 + 6 + 1 of 64.
    expect(win).toBeCloseTo(42 / 64, 12)
    expect(win + lose).toBeCloseTo(1, 12)
  })
})
