import { describe, expect, it } from 'vitest'
import type { Area } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import {
  area,
  box,
  CALM_DAY,
  enclosed,
  inventedHole,
  inventedPlayer,
  mirrored,
  tree,
} from './invented-hole.fixture.ts'
import type { Plan, PlanOption } from './plan.ts'
import { planHole } from './plan-hole.ts'

// What a ball behind trees is advised to do must follow from how high they stand and what they leave open beneath:
// common practice of the trade, over low growth, under high branches, sideways from a wall.

const player = inventedPlayer(
  [
    { name: '6-iron', carry_m: 138, total_m: 146, left_share: 1.1, right_share: 0.9, curve_share: -0.02 },
    { name: '8-iron', carry_m: 118, total_m: 124 },
    { name: 'pitching-wedge', carry_m: 98, total_m: 101 },
    { name: 'sand-wedge', carry_m: 70, total_m: 71 },
  ],
  8,
)

/** Rough to the right of a fairway, and growth between the ball and the pin, 140 m away. */
function barred(ground: 'trees' | 'scrub', figures: Partial<Area>): Hole {
  const open = inventedHole(230, [
    area('fairway', box(-19.3, 21.1, 41.3, 214.2)),
    { ...area(ground, box(-13.2, 69.1, 101.3, 111.2)), unplayableShare: 0.2, lostShare: 0, ...figures },
  ])
  return enclosed(open, -45, 69.1)
}

function planFrom(hole: Hole, from: readonly [number, number] | null, who = player): Plan {
  return planHole({
    courseName: 'test',
    hole,
    player: who,
    day: CALM_DAY,
    ...(from === null ? {} : { from, lie: 'rough' as const }),
    draws: 0,
    flips: false,
    cellMetres: 8,
    quadrature: { good: 16, mishit: 8 },
  })
}

const BALL = [34, 90] as const

function isWhole(option: PlanOption): boolean {
  const shares = Object.values(option.outcomes)
  return (
    Math.abs(shares.reduce((sum, share) => sum + share, 0) - 1) < 1e-9 &&
    [option.strokes, option.trees.caught, option.total_m, option.leave_m.p50, option.misses.left].every(
      Number.isFinite,
    )
  )
}

describe('a ball with trees between it and the pin', () => {
  const scrub = planFrom(barred('scrub', { heightMetres: 2.6, densityPerMetre: 2 }), BALL)
  const tall = planFrom(barred('trees', { heightMetres: 24, crownBaseMetres: 5, densityPerMetre: 0.2 }), BALL)
  const wall = planFrom(barred('trees', { heightMetres: 24, crownBaseMetres: 0, densityPerMetre: 3 }), BALL)

  it('goes over low scrub with a usual shot', () => {
    const [best] = scrub.options as [PlanOption]
    expect(best.trees.way).toBe('over')
    expect(best.shape).toBe('stock')
    expect(best.trees.caught).toBeLessThan(0.2)
    expect(scrub.sentence).toContain('over the scrub')
  })

  it('goes under tall crowns with a punch', () => {
    const [best] = tall.options as [PlanOption]
    expect(best.trees.way).toBe('under')
    expect(best.shape).toBe('punch')
    expect(tall.sentence).toMatch(/^(Too close .*)?Punch .* under the trees/)
  })

  it('goes sideways from a wall that reaches the ground, and says so', () => {
    const [best] = wall.options as [PlanOption]
    expect(best.trees.way).toBe('sideways')
    expect(best.trees.caught).toBeLessThan(0.2)
    expect(wall.sentence).toMatch(/sideways to the left/)
    expect(wall.value.strokes).toBeGreaterThan(tall.value.strokes)
    expect(tall.value.strokes).toBeGreaterThan(scrub.value.strokes)
  })

  it('counts every ball once, with finite figures, whatever the way', () => {
    for (const plan of [scrub, tall, wall])
      for (const option of plan.options) expect(isWhole(option), option.club).toBe(true)
  })

  it('is mirrored for a left-hander', () => {
    const hole = barred('trees', { heightMetres: 24, crownBaseMetres: 5, densityPerMetre: 0.2 })
    const mirror = planFrom(mirrored(hole), [-BALL[0], BALL[1]], mirrorPlayer(player))
    expect(mirror.value.strokes).toBeCloseTo(tall.value.strokes, 9)
    for (const [index, option] of tall.options.entries()) {
      const other = mirror.options[index] as PlanOption
      expect(other.club).toBe(option.club)
      expect(other.trees.way).toBe(option.trees.way)
      expect(other.trees.caught).toBeCloseTo(option.trees.caught, 9)
      expect(other.trees.gap?.degrees ?? 0).toBeCloseTo(option.trees.gap?.degrees ?? 0, 9)
      expect(other.aim.heading_deg).toBeCloseTo(-option.aim.heading_deg, 9)
    }
  })
})

describe('single trees', () => {
  const open = enclosed(inventedHole(150, [area('fairway', box(-20, 20, 20, 135))]), -40, 40)
  const inLine = (height: number): Plan => planFrom({ ...open, trees: [tree(0, 22, height)] }, [0, 8])
  const none = planFrom(open, [0, 8])

  it('cost more the higher they stand in the line, and nothing where no ball comes', () => {
    const low = inLine(3)
    const high = inLine(20)
    expect(low.value.strokes).toBeGreaterThanOrEqual(none.value.strokes - 1e-9)
    expect(high.value.strokes).toBeGreaterThan(low.value.strokes)
    const away = planFrom({ ...open, trees: [tree(95, 150, 25)] }, [0, 8])
    expect(away.value.strokes).toBeCloseTo(none.value.strokes, 9)
    expect(away.options.map(({ club }) => club)).toEqual(none.options.map(({ club }) => club))
    expect(none.options.every(({ trees }) => trees.way === 'open' && trees.caught === 0)).toBe(true)
  })

  it('leave a gap that is measured in the player’s own spread', () => {
    const row = [-30, -24, -18, -12, -6, 6, 12, 18, 24, 30].map((x) => ({
      ...tree(x, 30, 22),
      crownBaseMetres: 0,
      densityPerMetre: 3,
      crownRadiusMetres: 3,
    }))
    const plan = planFrom({ ...open, trees: row }, [0, 8])
    const through = plan.options.find(({ trees }) => trees.gap !== null) as PlanOption
    // The crowns beside the gap leave 6 m open, 22 m away: 2 atan(3/22) = 15.5° between their edges, a little more where half the balls come through.
    expect(through.trees.gap?.degrees).toBeGreaterThan(14)
    expect(through.trees.gap?.degrees).toBeLessThan(18)
    expect(through.trees.gap?.spreads).toBeGreaterThan(0.5)
    expect(through.trees.caught).toBeGreaterThan(0.05)
  })
})

describe('a corner that trees stand on', () => {
  const long = inventedPlayer([
    { name: 'driver', carry_m: 205, total_m: 222 },
    { name: '7-iron', carry_m: 132, total_m: 138 },
    { name: 'sand-wedge', carry_m: 70, total_m: 71 },
  ])
  /** A hole that bends 40° to the right at 180 m; woods stand inside the bend. */
  const corner = (heightMetres: number): Hole => {
    const pin = [77, 272] as const
    const straight = inventedHole(300, [
      area('fairway', box(-18, 18, 40, 190)),
      area('fairway', [
        [
          [-18, 175],
          [8, 165],
          [80, 250],
          [58, 268],
        ],
      ]),
      { ...area('trees', box(22, 80, 60, 165)), heightMetres, crownBaseMetres: 1, densityPerMetre: 0.5 },
    ])
    const bent = {
      ...straight,
      line: [[0, 0], [0, 180], pin],
      pin,
      green: [
        [
          [66, 261],
          [88, 261],
          [88, 283],
          [66, 283],
        ],
      ],
      areas: [
        ...straight.areas.filter((one) => one.ground !== 'green'),
        area('green', box(66, 88, 261, 283), 'green'),
      ],
    } as const
    return enclosed(bent, -35, 105)
  }

  it('is cut over low trees and not over high ones', () => {
    const low = planFrom(corner(8), null, long).options.find(({ club }) => club === 'driver') as PlanOption
    const high = planFrom(corner(25), null, long).options.find(({ club }) => club === 'driver') as PlanOption
    expect(low.aim.heading_deg).toBeGreaterThan(high.aim.heading_deg + 2)
    expect(low.strokes).toBeLessThan(high.strokes)
    expect(low.trees.way).toBe('over')
    expect(high.trees.way).not.toBe('through')
  })
})
