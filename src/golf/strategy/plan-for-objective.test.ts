import { describe, expect, it } from 'vitest'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { atMostObjective, type Objective, pointsObjective } from './objective.ts'
import type { FormatPart, Plan } from './plan.ts'
import { planHole } from './plan-hole.ts'

// A hole of our own that can be reached over a pond: from the tee the long club attacks and the short one protects.

const player = inventedPlayer(
  [
    { name: '3-wood', carry_m: 190, total_m: 204 },
    { name: '7-iron', carry_m: 124, total_m: 131 },
    { name: 'pitching-wedge', carry_m: 92, total_m: 95 },
  ],
  12,
)

function planned(lengthMetres: number, objective: Objective | undefined, draws = 0): Plan {
  return planHole({
    courseName: 'test',
    hole: inventedHole(lengthMetres, [
      area('fairway', box(-16, 16, 60, lengthMetres - 14)),
      area('penalty-yellow', box(-60, 60, lengthMetres - 66, lengthMetres - 36)),
    ]),
    player,
    day: CALM_DAY,
    draws,
    flips: false,
    cellMetres: 10,
    quadrature: { good: 32, mishit: 12 },
    ...(objective && { objective }),
  })
}

const counted = { played: 0, notes: [] }

describe('a plan for what a score is worth', () => {
  it('protects two strokes in hand on the last hole', () => {
    const fewest = planned(222, undefined)
    expect(fewest.options[0]?.club).toBe('3-wood')
    // Two ahead on the last tee of somebody who has made a four there: a five still wins.
    const plan = planned(222, atMostObjective(5, counted))
    const format = plan.format as FormatPart
    expect(plan.situation.objective).toBe('at-most:5')
    expect(plan.options[0]?.club).toBe('7-iron')
    expect(format).toMatchObject({ changes: 'club', manner: 'protect', fewest_strokes: { club: '3-wood' } })
    expect(format.gain).toBeGreaterThan(0.02)
    expect(format.value - format.fewest_strokes.value).toBeCloseTo(format.gain, 12)
    expect(format.strokes_given_up).toBeGreaterThan(0)
    expect(plan.sentence).toMatch(/^For 5 or better it is the 7-iron, not the 3-wood: .+ That protects, /)
    // What an option is worth is the chance of its scores.
    for (const option of plan.options) {
      const scores = Object.entries(option.scores)
      const atMost = scores.reduce((sum, [score, chance]) => sum + (Number(score) <= 5 ? chance : 0), 0)
      expect(option.worth).toBeCloseTo(atMost, 9)
      expect(scores.reduce((sum, [, chance]) => sum + chance, 0)).toBeCloseTo(1, 9)
    }
    const costs = plan.options.map(({ cost }) => cost)
    expect(costs[0]).toBe(0)
    expect(costs).toEqual([...costs].sort((a, b) => a - b))
  })

  it('attacks when only a birdie will do, from players that this one may be too', () => {
    expect(planned(226, undefined).options[0]?.club).toBe('7-iron')
    const plan = planned(226, atMostObjective(3, counted), 8)
    const format = plan.format as FormatPart
    expect(plan.options[0]?.club).toBe('3-wood')
    expect(format).toMatchObject({ changes: 'club', manner: 'attack', fewest_strokes: { club: '7-iron' } })
    expect(plan.sentence).toMatch(/^For 3 or better it is the 3-wood, not the 7-iron: .+ That attacks, /)
    expect(format.low).toBeLessThan(format.value)
    expect(format.high).toBeGreaterThan(format.value)
    expect(plan.verdict).toBe('clear')
    expect(plan.options[0]?.best_in_draws).toBeGreaterThan(0.8)
  })

  it('says so where the format changes nothing', () => {
    const plan = planned(226, pointsObjective(4, 0, counted))
    expect(plan.options[0]?.club).toBe('7-iron')
    expect(plan.format).toMatchObject({ changes: 'nothing', manner: null, match: null })
    expect(plan.sentence).toMatch(/^The format changes nothing here: the 7-iron is right for points /)
    // Points are strokes as long as none is lost to the table's end: 2 + par − score.
    expect(plan.format?.value).toBeGreaterThan(6 - plan.value.strokes)
  })

  it('counts the strokes already used', () => {
    const fresh = planned(226, atMostObjective(4, counted)).format as FormatPart
    const later = planned(226, atMostObjective(6, { ...counted, played: 2 })).format as FormatPart
    expect(later.value).toBeCloseTo(fresh.value, 9)
    const lost = planned(226, atMostObjective(4, { ...counted, played: 3 }))
    expect(lost.format).toMatchObject({ changes: 'nothing', value: 0 })
  })
})
