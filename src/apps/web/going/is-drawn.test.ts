import { expect, it } from 'vitest'
import { isDrawn } from './is-drawn.ts'

it('draws two curves only where both choices are possible from two places or more', () => {
  const both = { from_m: 150, go: 3.2, lay_up: 3.4 }
  expect(isDrawn({ curve: [both, { ...both, from_m: 140 }] })).toBe(true)
  expect(isDrawn({ curve: [both, { ...both, go: null }, { ...both, lay_up: null }] })).toBe(false)
  expect(isDrawn({ curve: [] })).toBe(false)
})
