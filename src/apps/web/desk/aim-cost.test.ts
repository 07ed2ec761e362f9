import { describe, expect, it } from 'vitest'
import type { PlanOption } from '#golf/strategy/plan.ts'
import { aimCost, isBeyondTried } from './aim-cost.ts'

const option = {
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

  it('knows no price without tried lines', () => {
    expect(aimCost({ aimCosts: [] } as unknown as PlanOption, 0)).toBeNull()
  })
})
