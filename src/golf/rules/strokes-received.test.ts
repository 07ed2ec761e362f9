import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { strokesReceived } from './strokes-received.ts'

const INDEXES = Array.from({ length: 18 }, (_, hole) => hole + 1)

describe('strokesReceived', () => {
  it('gives strokes from index 1 on, a second from 19 on', () => {
    expect(INDEXES.map((index) => strokesReceived(0, index))).toEqual(Array(18).fill(0))
    expect(INDEXES.filter((index) => strokesReceived(5, index) === 1)).toEqual([1, 2, 3, 4, 5])
    expect(strokesReceived(20, 2)).toBe(2)
    expect(strokesReceived(20, 3)).toBe(1)
  })

  // whs_worked_examples.csv: "plus playing handicap +2 gives strokes back on stroke index: 18 and 17".
  it('takes a plus player’s strokes back from index 18 down', () => {
    expect(INDEXES.filter((index) => strokesReceived(-2, index) === -1)).toEqual([17, 18])
    expect(strokesReceived(-19, 18)).toBe(-2)
  })

  it('gives over 18 holes exactly the playing handicap', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 80 }), (handicap) => {
        const total = INDEXES.reduce((sum, index) => sum + strokesReceived(handicap, index), 0)
        expect(total).toBe(handicap)
      }),
    )
  })
})
