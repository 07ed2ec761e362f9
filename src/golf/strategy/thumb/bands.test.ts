import { describe, expect, it } from 'vitest'
import { bandsOf, zeroBetween } from './bands.ts'

describe('bandsOf', () => {
  it('joins neighbours with one label, and parts them where a place has none', () => {
    const bands = bandsOf(['a', 'a', 'b', '-', 'b', 'a'], (label) => (label === '-' ? null : label))
    expect(bands.map(({ label, items }) => `${label}${items.length}`)).toEqual(['a2', 'b1', 'b1', 'a1'])
    expect(bandsOf([], () => 'a')).toEqual([])
  })
})

describe('zeroBetween', () => {
  it('is where a straight line between two figures passes through zero', () => {
    expect(zeroBetween({ at: 220, value: 0.06 }, { at: 210, value: -0.03 })).toBeCloseTo(640 / 3, 9)
    expect(zeroBetween({ at: 10, value: -1 }, { at: 20, value: 0 })).toBe(20)
  })
})
