import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import type { PlanOption } from './plan.ts'
import { planHole } from './plan-hole.ts'

const CLUBS = [
  { name: '3-wood', carry_m: 185, total_m: 200 },
  { name: '6-iron', carry_m: 138, total_m: 145 },
  { name: 'pitching-wedge', carry_m: 98, total_m: 101 },
]
const player = inventedPlayer(CLUBS)

/** Water right across where the longer club comes down, moved on by so many metres. */
function pondAcross(moved: number): Hole {
  return inventedHole(330, [
    area('fairway', box(-20, 20, 60, 310)),
    area('penalty-red', box(-60, 60, 172 + moved, 206 + moved), 'pond'),
  ])
}

function optionsOf(hole: Hole, wind = 0): readonly PlanOption[] {
  // Reason: 90° is east; the hole runs north, so a wind from 180° is behind.
  const day = { ...CALM_DAY, wind: { speedMetresPerSecond: Math.abs(wind), fromDegrees: wind > 0 ? 180 : 0 } }
  return planHole({ courseName: 'test', hole, player, day, draws: 0, flips: false, cellMetres: 6 }).options
}

describe('what flips a plan', () => {
  const plan = planHole({
    courseName: 'test',
    hole: pondAcross(0),
    player,
    day: CALM_DAY,
    draws: 0,
    cellMetres: 6,
  })

  it('stays short of the water as it lies', () => {
    expect(plan.options[0]?.club).toBe('6-iron')
  })

  it('names the distances at which the longer club is right, and a plan made anew there agrees', () => {
    const moves = plan.flips.filter((flip) => flip.what.startsWith('hazard:') && flip.at !== null)
    expect(moves.length).toBeGreaterThan(0)
    for (const { at, direction, club } of moves) {
      const sign = direction === 'further' ? 1 : -1
      // Beyond and before by more than a step of the search, which halves the range of 40 m five times.
      const beyond = optionsOf(pondAcross(sign * ((at as number) + 3)))
      expect(beyond[0]?.club, `${direction} ${at}`).not.toBe('6-iron')
      // Reason: where two clubs change places with a third at once, they are too close to call themselves.
      expect(beyond.find((option) => option.club === club)?.cost).toBeLessThan(0.03)
      // Reason: costs part slowly here, and the search weighs with fewer strikes than a plan; too close to call both ways.
      const before = optionsOf(pondAcross(sign * Math.max(0, (at as number) - 3)))
      expect(before.find((option) => option.club === '6-iron')?.cost).toBeLessThan(0.03)
    }
  })

  it('says of each quantity what it found, or that nothing in the range changes the club', () => {
    const quantities = new Set(plan.flips.map((flip) => `${flip.what} ${flip.direction}`))
    for (const wanted of [
      'wind into',
      'wind behind',
      'wind from the left',
      'firmness softer',
      'firmness firmer',
      'spread tighter',
      'spread wider',
    ])
      expect(quantities).toContain(wanted)
    for (const flip of plan.flips) expect((flip.at === null) === (flip.club === null)).toBe(true)
    const behind = plan.flips.find((flip) => flip.what === 'wind' && flip.direction === 'behind')
    if (behind?.at) expect(optionsOf(pondAcross(0), behind.at + 1)[0]?.club).toBe(behind.club)
  })
})
