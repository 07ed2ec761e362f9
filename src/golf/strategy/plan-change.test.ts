import { describe, expect, it } from 'vitest'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import type { Plan, PlanOption } from './plan.ts'
import { planChange } from './plan-change.ts'
import { planHole } from './plan-hole.ts'

/** A plan with nothing in it but what is compared. */
function plan(options: readonly Partial<PlanOption>[], number: 'front' | 'back' = 'front'): Plan {
  return {
    hole: { ref: '4', par: 4, length_m: 300, tee: '' },
    options,
    // biome-ignore lint/suspicious/noThenProperty: `then` is promised by plan/1, and no plan is ever awaited.
    then: [{ lie: 'fairway', number }],
  } as unknown as Plan
}

function option(club: string, cost: number, offset = 0): Partial<PlanOption> {
  return {
    club,
    shape: 'stock',
    cost,
    aim: { heading_deg: 0, offset_m: offset, at_m: 200, start_deg: 0 },
    aimCosts: [-20, -10, 0, 10, 20].map((offset_m) => ({
      offset_m,
      cost: cost + Math.abs(offset_m - offset) / 100,
    })),
  }
}

describe('what changes of a plan with the player', () => {
  it('is nothing while the old stroke is too close to call', () => {
    expect(
      planChange(plan([option('driver', 0)]), plan([option('5-wood', 0), option('driver', 0.02)])),
    ).toBeNull()
    expect(planChange(plan([option('driver', 0)]), plan([option('driver', 0, 2)]))).toBeNull()
  })

  it('is the club, at the price of the old one now', () => {
    const change = planChange(
      plan([option('driver', 0)]),
      plan([option('5-wood', 0), option('driver', 0.07)]),
    )
    expect(change?.first).toMatchObject({
      what: 'club',
      before: { club: 'driver' },
      after: { club: '5-wood' },
    })
    expect(change?.first?.cost).toBeCloseTo(0.07, 9)
    const gone = planChange(plan([option('driver', 0)]), plan([option('5-wood', 0)]))
    expect(gone?.first?.cost).toBeNull()
  })

  it('is the line of the same club, between the lines that were weighed', () => {
    const change = planChange(plan([option('driver', 0, 15)]), plan([option('driver', 0, 0)]))
    expect(change?.first?.what).toBe('line')
    expect(change?.first?.cost).toBeCloseTo(0.15, 9)
  })

  it('is the number of an approach', () => {
    const change = planChange(plan([option('driver', 0)]), plan([option('driver', 0)], 'back'))
    expect(change).toMatchObject({
      first: null,
      approaches: [{ lie: 'fairway', before: 'front', after: 'back' }],
    })
  })

  it('is found where a player has become long enough for the water', () => {
    const hole = inventedHole(180, [
      area('fairway', box(-15, 15, 20, 115)),
      area('penalty-red', box(-60, 60, 118, 160)),
    ])
    const planOf = (carry_m: number): Plan =>
      planHole({
        courseName: '',
        hole,
        player: inventedPlayer([
          { name: '5-wood', carry_m, total_m: carry_m + 8, mishit_share: 0.02 },
          { name: '9-iron', carry_m: 95, total_m: 99 },
        ]),
        day: CALM_DAY,
        isQuick: true,
      })
    const [short, long] = [planOf(140), planOf(176)]
    expect(short.options[0]?.club).toBe('9-iron')
    expect(planChange(short, long)?.first).toMatchObject({ what: 'club', after: { club: '5-wood' } })
    expect(planChange(long, long)).toBeNull()
  })
})
