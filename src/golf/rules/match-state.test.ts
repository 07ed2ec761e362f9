import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { holeResult, matchState, matchWords } from './match-state.ts'

// Rules of Golf 2023, 3.2a: a match is won when a side leads by more holes than remain to be played.

const results = fc.array(fc.constantFrom<-1 | 0 | 1>(-1, 0, 1), { maxLength: 18 })

describe('the state of a match', () => {
  it.each([
    [[1, 1, 1, ...Array(13).fill(0)], 'won 3 and 2'],
    [[-1, ...Array(17).fill(0)], 'lost 1 down'],
    [Array(18).fill(0), 'the match is tied'],
    [[1, 1, ...Array(14).fill(0)], '2 up with 2 to play, dormie'],
    [[1, -1], 'level with 16 to play'],
    [Array(10).fill(1), 'won 10 and 8'],
    [[...Array(10).fill(1), -1, -1], 'won 10 and 8'],
  ] as const)('after %j is: %s', (played, words) => {
    expect(matchWords(matchState(played as (-1 | 0 | 1)[], 18))).toBe(words)
  })

  it('is the other side’s turned round', () => {
    fc.assert(
      fc.property(results, (played) => {
        const other = matchState(
          played.map((one) => (0 - one) as -1 | 0 | 1),
          18,
        )
        const own = matchState(played, 18)
        expect(own).toEqual({ ...other, up: 0 - other.up })
        expect(own.isOver).toBe(own.left === 0 || Math.abs(own.up) > own.left)
      }),
    )
  })

  it('a hole that is not holed out is lost to any score', () => {
    expect([holeResult(4, null), holeResult(null, 9), holeResult(null, null), holeResult(5, 4)]).toEqual([
      1, -1, 0, -1,
    ])
  })
})
