import { describe, expect, it } from 'vitest'
import { alternateShot, type Partners, type TeeTurn } from './alternate-shot.ts'
import { area, box, CALM_DAY, enclosed, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { keptGround } from './kept-ground.ts'
import { workPlan } from './plan-hole.ts'
import { splitTees } from './split-tees.ts'

const open = inventedHole(330, [
  area('fairway', box(-15, 15, 60, 300), 'fairway'),
  area('penalty-red', box(18, 60, 120, 260), 'water'),
])
const hole = enclosed(open, -35, 60)
const long = inventedPlayer([
  { name: 'driver', carry_m: 215, direction_sd_deg: 7 },
  { name: '6-iron', carry_m: 145 },
  { name: 'pitching-wedge', carry_m: 100 },
])
const straight = inventedPlayer([
  { name: '5-wood', carry_m: 150, direction_sd_deg: 3 },
  { name: '7-iron', carry_m: 110 },
  { name: 'pitching-wedge', carry_m: 75 },
])
const wild = {
  ...long,
  clubs: long.clubs.map((club) => ({ ...club, directionSdDegrees: 2 * club.directionSdDegrees })),
}
const layGround = keptGround()
const strokes = (turns: Partners<TeeTurn>): number[] => turns.map((turn) => turn.strokes)

describe('alternateShot', () => {
  // A foursome of a player with himself is his own round: the quick plan, solved without any turns, is the independent answer.
  it.each([
    ['long', long],
    ['straight', straight],
  ])('is a player alone where both partners are the same: %s', (_, player) => {
    const alone = workPlan(
      { courseName: '', hole, player, day: CALM_DAY, isQuick: true, draws: 0, flips: false },
      layGround,
    ).plan
    const { turns, residual } = alternateShot({ hole, players: [player, player], day: CALM_DAY }, layGround)
    expect(residual).toBeLessThan(1e-3)
    for (const turn of turns) {
      expect(turn.strokes).toBeCloseTo(alone.value.strokes, 3)
      expect(turn.best.shot.club).toBe(alone.options[0]?.club)
    }
  })

  it('is the same pair in either order, and worse for having a wilder partner', () => {
    const pair = alternateShot({ hole, players: [long, straight], day: CALM_DAY }, layGround)
    const turned = alternateShot({ hole, players: [straight, long], day: CALM_DAY }, layGround)
    expect(pair.residual).toBeLessThan(1e-3)
    expect(strokes(turned.turns)[0]).toBeCloseTo(strokes(pair.turns)[1] ?? 0, 3)
    expect(strokes(turned.turns)[1]).toBeCloseTo(strokes(pair.turns)[0] ?? 0, 3)
    const alone = alternateShot({ hole, players: [long, long], day: CALM_DAY }, layGround)
    const worse = alternateShot({ hole, players: [long, wild], day: CALM_DAY }, layGround)
    for (const turn of strokes(worse.turns)) expect(turn).toBeGreaterThan(strokes(alone.turns)[0] ?? 0)
  })
})

describe('splitTees', () => {
  const turnsOf = (a: number, b: number): Partners<TeeTurn> =>
    [a, b].map((one) => ({ strokes: one, best: { shot: {}, heading: 0 }, hazard: null })) as never
  const round = (...costs: readonly (readonly [number, number])[]): Parameters<typeof splitTees>[0] =>
    costs.map(([a, b], place) => ({ ref: String(place + 1), place, turns: turnsOf(a, b) }))

  it('takes the cheaper of the two orders that the Rules leave (Rule 22.3)', () => {
    // Odd holes 4.0 and 3.0 by the second, even ones 5.0 by the first: 12.0 against 4.2 + 5.3 + 3.1 = 12.6.
    const split = splitTees(round([4.2, 4], [5, 5.3], [3.1, 3]))
    expect(split.odd).toBe(1)
    expect(split.strokes).toBeCloseTo(12, 12)
    expect(split.otherwise).toBeCloseTo(12.6, 12)
    expect(split.matters).toBe(true)
    for (const [index, saved] of [0.2, 0.3, 0.1].entries()) expect(split.saves[index]).toBeCloseTo(saved, 12)
    expect(split.saves.reduce((sum, one) => sum + one, 0)).toBeCloseTo(split.otherwise - split.strokes, 12)
  })

  it('counts the tees of a hole that is left out: it is played all the same', () => {
    // Without the second hole the third is still an odd one, and the fourth an even one.
    const [first, , third, fourth] = round([3.7, 3.6], [4, 4], [3.7, 3.6], [4, 3.8])
    const split = splitTees([first, third, fourth].flatMap((hole) => hole ?? []))
    expect(split.strokes).toBeCloseTo(3.6 + 3.6 + 4, 12)
    expect(split.otherwise).toBeCloseTo(3.7 + 3.7 + 3.8, 12)
  })

  it('says when it does not matter, though a hole may ask for the other partner', () => {
    const split = splitTees(round([4, 4.1], [5, 4.9], [3, 3]))
    expect(split.matters).toBe(true)
    expect(splitTees(round([4, 4.1], [4.9, 5])).matters).toBe(false)
    expect(splitTees(round([4, 4.1], [4.9, 5])).hasSay).toEqual([true, true])
    expect(() => splitTees([])).toThrow(RangeError)
  })
})
