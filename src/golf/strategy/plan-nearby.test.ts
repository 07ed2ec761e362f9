import { beforeAll, describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { keptGround } from './kept-ground.ts'
import type { NearbyStart } from './nearby-start.ts'
import type { Plan } from './plan.ts'
import { type PlanQuestion, planHole, workPlan } from './plan-hole.ts'
import { planNearby } from './plan-nearby.ts'

const player = inventedPlayer([
  { name: '3-wood', carry_m: 185, total_m: 200 },
  { name: '6-iron', carry_m: 138, total_m: 145 },
  { name: 'pitching-wedge', carry_m: 98, total_m: 101 },
])

function hole(pondMoved = 0, pin: readonly [number, number] = [0, 330]): Hole {
  const plain = inventedHole(330, [
    area('fairway', box(-20, 20, 60, 310)),
    area('penalty-red', box(-60, 60, 196 + pondMoved, 226 + pondMoved), 'pond'),
  ])
  return { ...plain, pin, line: [[0, 0], pin] }
}

const usual = {
  courseName: 'test',
  hole: hole(),
  player,
  day: CALM_DAY,
  draws: 0,
  flips: false,
  cellMetres: 6,
}
const layGround = keptGround()

describe('a plan near another', () => {
  let start: NearbyStart
  let plan: Plan

  beforeAll(() => {
    const worked = workPlan(usual, layGround)
    plan = worked.plan
    start = worked.start as NearbyStart
  })

  function nearby(change: Partial<PlanQuestion>): Plan {
    return (planNearby({ ...usual, ...change }, start, layGround) as { plan: Plan }).plan
  }

  it('is the same plan when nothing has changed', () => {
    const same = nearby({})
    expect(same.options.map(({ club }) => club)).toEqual(plan.options.map(({ club }) => club))
    for (const [index, option] of same.options.entries())
      expect(Math.abs(option.strokes - (plan.options[index]?.strokes as number))).toBeLessThan(2e-3)
    expect(same.options[0]?.aimCosts.length).toBeGreaterThan(10)
    const longer = Object.entries(same.options[0]?.scores ?? {}).map(
      ([score, chance]) => Number(score) * chance,
    )
    expect(longer.reduce((sum, part) => sum + part, 0)).toBeCloseTo(same.value.strokes, 1)
  })

  it.each([
    ['wind', { day: { ...CALM_DAY, wind: { speedMetresPerSecond: 1, fromDegrees: 20 } } }],
    ['firmness', { day: { ...CALM_DAY, firmness: 1.2 } }],
    ['the pin', { hole: hole(0, [3, 327]) }],
    ['a hazard', { hole: hole(5) }],
    [
      'a club',
      {
        player: {
          ...player,
          clubs: player.clubs.map((club) => (club.name === '6-iron' ? { ...club, carryMetres: 142 } : club)),
        },
      },
    ],
  ] as const)('is the plan made anew within a hundredth of a stroke after %s has moved', (_what, change) => {
    const near = nearby(change)
    const anew = planHole({ ...usual, ...change })
    for (const option of anew.options) {
      const same = near.options.find(({ club }) => club === option.club)
      expect(Math.abs((same?.strokes as number) - option.strokes), option.club).toBeLessThan(0.01)
    }
  })

  it.each([
    ['the fairway', [4, 190] as const, undefined],
    ['heavy grass', [-24, 150] as const, 'heavy' as const],
  ])('is the plan made anew within two hundredths of a stroke with the ball on %s', (_where, from, lie) => {
    const change = { from, ...(lie === undefined ? {} : { lie }) }
    const near = nearby(change)
    const anew = planHole({ ...usual, ...change })
    expect(near.situation).toEqual(anew.situation)
    for (const option of anew.options) {
      const same = near.options.find(({ club }) => club === option.club)
      expect(Math.abs((same?.strokes as number) - option.strokes), option.club).toBeLessThan(0.02)
    }
  })

  it('is not made near the green, where a plan is of another kind', () => {
    expect(planNearby({ ...usual, from: [0, 310] }, start, layGround)).toBeNull()
  })

  it('is not made on another hole, from another tee or for another player', () => {
    for (const change of [
      { hole: { ...hole(), ref: '2' } },
      { hole: { ...hole(), bearingDegrees: 10 } },
      { player: { ...player, name: 'Somebody else' } },
    ])
      expect(planNearby({ ...usual, ...change }, start, layGround)).toBeNull()
  })
})
