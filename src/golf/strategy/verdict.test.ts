import { describe, expect, it } from 'vitest'
import { verdictOf } from './verdict.ts'

/** Two clubs a gap apart, and the shares of draws in which each is the best. */
const two = (gap: number, first: number, second = 1 - first): Parameters<typeof verdictOf>[0] => [
  { cost: 0, best_in_draws: first },
  { cost: gap, best_in_draws: second },
]

describe('verdictOf', () => {
  it.each<[string, number, number, string]>([
    ['a gap under 0.03, however sure', 0.029, 1, 'too-close'],
    ['neither club best in four of five draws', 0.2, 0.79, 'too-close'],
    ['the second best in four of five draws, against what the likeliest numbers say', 0.2, 0.2, 'too-close'],
    ['a gap of 0.03 with four of five draws', 0.03, 0.8, 'close'],
    ['a gap of 0.08 with 94 of a hundred draws', 0.08, 0.94, 'close'],
    ['a gap of 0.079 with all draws', 0.079, 1, 'close'],
    ['a gap of 0.08 with 95 of a hundred draws', 0.08, 0.95, 'clear'],
  ])('says of %s what it is', (_title, gap, share, verdict) => {
    expect(verdictOf(two(gap, share), 16)).toBe(verdict)
  })

  it('goes by the gap alone where nothing was drawn', () => {
    expect(verdictOf(two(0.1, 0), 0)).toBe('clear')
    expect(verdictOf(two(0.02, 1), 0)).toBe('too-close')
  })

  it('calls the only club clear', () => {
    expect(verdictOf([{ cost: 0, best_in_draws: 1 }], 16)).toBe('clear')
  })
})
