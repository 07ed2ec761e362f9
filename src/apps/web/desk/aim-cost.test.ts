import { describe, expect, it } from 'vitest'
import type { PlanOption } from '#golf/strategy/plan.ts'
import { aimCost, isBeyondTried } from './aim-cost.ts'

const option = {
  aim: { at_m: 200 },
  total_m: 200,
  aimCosts: [
    { offset_m: 10, cost: 0.2 },
    { offset_m: -10, cost: 0.1 },
    { offset_m: 0, cost: 0 },
  ],
} as unknown as PlanOption

describe('aimCost', () => {
  it('joins the tried lines by straight lines, whatever their order', () => {
    expect(aimCost(option, 0)).toBe(0)
    expect(aimCost(option, 5)).toBeCloseTo(0.1, 12)
    expect(aimCost(option, -2.5)).toBeCloseTo(0.025, 12)
  })

  it('stays level beyond the last tried line and says that it is beyond', () => {
    expect(aimCost(option, 40)).toBe(0.2)
    expect(aimCost(option, -40)).toBe(0.1)
    expect(isBeyondTried(option, 40)).toBe(true)
    expect(isBeyondTried(option, 9)).toBe(false)
  })

  it('reads a line where it finishes today, not where it would on a calm day', () => {
    const intoWind = { ...option, total_m: 150 }
    expect(aimCost(intoWind, 7.5)).toBeCloseTo(0.2, 12)
    expect(isBeyondTried(intoWind, 9)).toBe(true)
  })

  it('knows no price without tried lines', () => {
    expect(aimCost({ ...option, aimCosts: [] } as unknown as PlanOption, 0)).toBeNull()
  })
})
