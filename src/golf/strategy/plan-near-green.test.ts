import { describe, expect, it } from 'vitest'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { mirrorPlayer } from '#golf/player/mirror-player.ts'
import type { Lie, Player } from '#golf/player/player.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer, mirrored } from './invented-hole.fixture.ts'
import { atMostObjective, type Objective } from './objective.ts'
import type { Plan, ShortPart } from './plan.ts'
import { planHole } from './plan-hole.ts'

/** Pin of a hole of 100 m on a round green of 11.3 m; the ball lies beside it. */
const PIN = 100
const CLUBS = [
  { name: '7-iron', carry_m: 125 },
  { name: '9-iron', carry_m: 105 },
  { name: 'pitching-wedge', carry_m: 95 },
  { name: 'sand-wedge', carry_m: 70 },
]
const player = inventedPlayer(CLUBS)

function plan(
  hole: Hole,
  from: readonly [number, number],
  lie: Lie,
  more: {
    readonly day?: Partial<Day>
    readonly player?: Player
    readonly draws?: number
    readonly club?: string
  } = {},
): Plan {
  return planHole({
    courseName: 'Test',
    hole,
    player: more.player ?? player,
    day: { ...CALM_DAY, ...more.day },
    from,
    lie,
    draws: more.draws ?? 0,
    ...(more.club === undefined ? {} : { club: more.club }),
  })
}
const value = (...asked: Parameters<typeof plan>): number => plan(...asked).value.strokes
const part = (answer: Plan, club?: string): ShortPart => {
  const found = answer.options.find((option) => club === undefined || option.club === club)?.short
  if (found === undefined) throw new Error(`no short shot with ${club}`)
  return found
}
const mown = inventedHole(PIN, [area('fairway', box(-40.3, 40.3, 40.2, 140.2))])
const falling = (percent: number, toward: number): Hole => ({
  ...mown,
  greenFallPercent: percent,
  greenFallTowardDegrees: toward,
})

describe('a plan near the green', () => {
  it('is a plan/1: options by cost, one row a club, shares that add up, a landing spot and a roll', () => {
    const answer = plan(mown, [0, PIN - 18], 'fairway', { draws: 4 })
    const costs = answer.options.map(({ cost }) => cost)
    expect(costs[0]).toBe(0)
    expect(costs).toEqual([...costs].sort((a, b) => a - b))
    const clubs = answer.options.map(({ club }) => club)
    expect(new Set(clubs)).toEqual(new Set(['putter', ...CLUBS.map(({ name }) => name)]))
    for (const option of answer.options) {
      const sum = (shares: object): number => Object.values(shares).reduce((total, share) => total + share, 0)
      expect(sum(option.outcomes)).toBeCloseTo(1, 9)
      expect(sum(option.scores)).toBeCloseTo(1, 9)
      expect(option.leave_m.p10).toBeLessThanOrEqual(option.leave_m.p90)
      const { carry_m, roll_m, landing, worst } = part(answer, option.club)
      if (option.shape !== 'putt')
        expect(Math.hypot(landing.x_m, landing.y_m - PIN + 18)).toBeCloseTo(carry_m, 6)
      expect(carry_m + roll_m).toBeGreaterThanOrEqual(option.total_m - 0.01)
      expect(worst.strokes).toBeGreaterThan(option.strokes)
    }
    expect(answer.sentence).toMatch(/^(Too close.*)?.+ the usual leave is .+ worst one in ten cost/)
    expect(answer.cautions[0]).toMatch(/counting round/)
  })

  it('lands a chip from fairway on the green where the ladder then lets it roll to the hole', () => {
    const { landing, carry_m, roll_m } = part(plan(mown, [0, PIN - 18], 'fairway'), 'pitching-wedge')
    expect(landing.ground).toBe('green')
    // Ladder A (common practice) as chip or half of it as pitch, at 9 ft instead of 10.
    expect([1.8, 0.9].some((roll) => Math.abs(roll_m / carry_m - roll) < 0.15)).toBe(true)
  })

  it('costs more the worse the lie, the longer the shot and the worse the player', () => {
    const hole = inventedHole(PIN, [
      area('fairway', box(-40.3, 0.3, 40.2, 140.2)),
      area('bunker', box(15.3, 40.3, 40.2, 140.2)),
    ])
    const at = (lie: Lie): number => value(hole, [0, PIN - 18], lie)
    expect(at('fairway')).toBeLessThan(at('rough'))
    expect(at('rough')).toBeLessThan(at('heavy'))
    expect(at('fairway')).toBeLessThan(value(hole, [18, PIN], 'bunker'))
    expect(at('fairway')).toBeLessThan(value(hole, [0, PIN - 40], 'fairway'))
    expect(value(mown, [0, PIN - 18], 'fairway', { player: inventedPlayer(CLUBS, 2) })).toBeLessThan(
      at('fairway'),
    )
  })

  it('charges for being short-sided, for a downhill chip and for a bunker between', () => {
    const grass = inventedHole(PIN)
    const tucked: Hole = {
      ...grass,
      pin: [8, PIN],
      line: [
        [0, 0],
        [8, PIN],
      ],
    }
    // 10 m from the pin with 6.7 m of grass before a green of 3.3 m, or with 19 m of green.
    expect(value(tucked, [18, PIN], 'rough')).toBeGreaterThan(value(tucked, [8, PIN - 10], 'rough') + 0.05)
    expect(value(falling(3, 0), [0, PIN - 16], 'fairway')).toBeGreaterThan(
      value(falling(3, 180), [0, PIN - 16], 'fairway') + 0.02,
    )
    const guarded = inventedHole(PIN, [
      area('fairway', box(-40.3, 40.3, 40.2, 140.2)),
      area('bunker', box(-9.3, 9.3, PIN - 15.2, PIN - 10.2)),
    ])
    expect(value(guarded, [0, PIN - 18], 'fairway')).toBeGreaterThan(
      value(mown, [0, PIN - 18], 'fairway') + 0.05,
    )
  })

  it('plays more loft over a bunker, and counts water behind the green', () => {
    const pond = inventedHole(PIN, [
      area('fairway', box(-40.3, 40.3, 40.2, PIN + 5.2)),
      area('penalty-red', box(-40.3, 40.3, PIN + 12.2, 140.2)),
    ])
    const [calm, wet] = [mown, pond].map((hole) => plan(hole, [0, PIN - 18], 'rough'))
    expect(wet?.value.strokes).toBeGreaterThan((calm?.value.strokes ?? 9) + 0.02)
    expect(wet?.options[0]?.outcomes.penalty).toBeGreaterThan(0)
  })

  it('aims above the hole on a slope across, and rolls further on a faster green', () => {
    // Falls to the right (90° clockwise from the y axis): the ball must start to the left.
    expect(part(plan(falling(2, 90), [0, PIN - 16], 'fairway'), '9-iron').start_beside_pin_m).toBeLessThan(
      -0.2,
    )
    const carry = (greenSpeedFeet: number): number =>
      part(plan(mown, [0, PIN - 16], 'fairway', { day: { greenSpeedFeet } }), '9-iron').carry_m
    expect(carry(12)).toBeLessThan(carry(8))
  })

  it('is mirrored for a mirrored hole and a left-hander', () => {
    const hole = {
      ...inventedHole(PIN, [
        area('fairway', box(-40.3, 3.3, 40.2, 140.2)),
        area('bunker', box(5.3, 12.3, PIN - 15.2, PIN - 8.2)),
        area('penalty-red', box(-40.3, -15.3, 40.2, 140.2)),
      ]),
      greenFallPercent: 2,
      greenFallTowardDegrees: 70,
    }
    const flipped = { ...mirrored(hole), greenFallTowardDegrees: -70 }
    const one = plan(hole, [4, PIN - 20], 'rough', { draws: 3 })
    const other = plan(flipped, [-4, PIN - 20], 'rough', { player: mirrorPlayer(player), draws: 3 })
    expect(other.value.strokes).toBeCloseTo(one.value.strokes, 9)
    expect(other.value.high).toBeCloseTo(one.value.high, 9)
    one.options.forEach((option, index) => {
      expect(other.options[index]).toMatchObject({ club: option.club, shape: option.shape })
      expect(other.options[index]?.aim.start_deg).toBeCloseTo(-option.aim.start_deg, 6)
      expect(other.options[index]?.misses.left).toBeCloseTo(option.misses.right, 6)
      expect(other.options[index]?.short?.landing.x_m).toBeCloseTo(-part(one, option.club).landing.x_m, 6)
    })
  })

  it('says the price of a club that is asked for, and refuses one that is not played', () => {
    const answer = plan(mown, [0, PIN - 18], 'fairway', { club: 'sand-wedge' })
    expect(answer.overruled?.club).toBe('sand-wedge')
    expect(() => plan(mown, [0, PIN - 18], 'rough', { club: 'putter' })).toThrow(/does not play a putter/)
    expect(() => plan(mown, [0, PIN - 18], 'green')).toThrow(/no green/)
  })

  it('putts on the green, and only putts', () => {
    const answer = plan(falling(2, 90), [0, PIN - 8], 'green')
    expect(answer.options.map(({ club }) => club)).toEqual(['putter'])
    expect(part(answer).carry_m).toBe(0)
    expect(part(answer).start_beside_pin_m).toBeLessThan(-0.1)
  })

  it('stays finite from anywhere about any green', () => {
    const uniform = seededGenerator(4)
    const few = inventedPlayer(
      [
        { name: '8-iron', carry_m: 110 },
        { name: 'sand-wedge', carry_m: 70 },
      ],
      30,
    )
    for (let trial = 0; trial < 12; trial++) {
      const hole = {
        ...inventedHole(PIN, [
          area('fairway', box(-40 * uniform(), 40 * uniform(), 40, 140)),
          area('bunker', box(-15, -5 + 20 * uniform(), PIN - 20, PIN - 9)),
          area('penalty-yellow', box(-40, 40, PIN + 10, PIN + 12 + 10 * uniform())),
          area('out', box(20 + 10 * uniform(), 60, 40, 140)),
        ]),
        greenFallPercent: 9 * uniform(),
        greenFallTowardDegrees: 360 * uniform(),
      }
      const day = { greenSpeedFeet: 7 + 6 * uniform(), firmness: 0.4 + 1.3 * uniform() }
      const turn = 2 * Math.PI * uniform()
      const away = 3 + 40 * uniform()
      const lie =
        (['fairway', 'rough', 'heavy', 'bunker', 'first-cut', 'trees'] as const)[trial % 6] ?? 'rough'
      const answer = plan(hole, [away * Math.sin(turn), PIN + away * Math.cos(turn)], lie, {
        day,
        player: few,
      })
      expect(answer.value.strokes).toBeGreaterThan(1)
      expect(answer.value.strokes).toBeLessThan(9)
      expect(JSON.stringify(answer)).not.toMatch(/null,"ground|NaN/)
      for (const option of answer.options)
        for (const figure of [option.strokes, option.total_m, ...Object.values(option.leave_m)])
          expect(Number.isFinite(figure)).toBe(true)
    }
  })
})

describe('a plan near the green for what a score is worth', () => {
  it('weighs each club by its scores, and says when that changes nothing', () => {
    const asked = (objective: Objective): Plan =>
      planHole({
        courseName: 'Test',
        hole: mown,
        player,
        day: CALM_DAY,
        from: [0, PIN - 18],
        lie: 'fairway',
        draws: 0,
        objective,
      })
    const fewest = plan(mown, [0, PIN - 18], 'fairway')
    const counted = { played: 2, notes: [] }
    const answer = asked(atMostObjective(4, counted))
    expect(answer.situation.objective).toBe('at-most:4')
    for (const option of answer.options)
      expect(option.worth).toBeCloseTo((option.scores['1'] ?? 0) + (option.scores['2'] ?? 0), 9)
    const worths = fewest.options.map(({ scores }) => (scores['1'] ?? 0) + (scores['2'] ?? 0))
    expect(answer.format?.value).toBeGreaterThan(Math.max(...worths) - 0.01)
    expect(answer.format?.fewest_strokes.club).toBe(fewest.options[0]?.club)
    expect(answer.options[0]?.cost).toBe(0)
    // Surely down in ten: nothing to choose.
    const sure = asked(atMostObjective(14, counted))
    expect(sure.format).toMatchObject({ changes: 'nothing', manner: null, gain: 0 })
    expect(sure.options[0]?.club).toBe(fewest.options[0]?.club)
    expect(sure.sentence).toMatch(/^The format changes nothing here: /)
  })
})
