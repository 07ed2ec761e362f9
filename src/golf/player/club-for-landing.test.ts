import { describe, expect, it } from 'vitest'
import { clubForLanding } from './club-for-landing.ts'
import { completePlayer } from './complete-player.ts'
import { parsePlayer } from './parse-player.ts'

const player = (more: object = {}) =>
  completePlayer(
    parsePlayer(
      JSON.stringify({ schema: 'player/1', name: 'Test', hand: 'right', handicapIndex: 12, ...more }),
      'test',
    ),
  )
/** Landing spots a pace on the green of every usual size, in metres from the ball and from there to the hole. */
const SPOTS = [2, 3, 4, 6, 8].flatMap((carryMetres) =>
  [1.2, 1.7, 2.2, 2.7, 3.5].map((roll) => ({ carryMetres, rollMetres: roll * carryMetres })),
)
const LEVEL = { risePercent: 0, greenSpeedFeet: 10 }
const loft = (question: Parameters<typeof clubForLanding>[1]): number =>
  clubForLanding(player(), question)[0]?.loftDegrees ?? Number.NaN

describe('clubForLanding', () => {
  // Common practice, `reference/README.md` 6: with the landing spot unchanged, one club less for uphill or slow, one more
  // for downhill or fast.
  it.each([
    ['2 % uphill', { risePercent: 2, greenSpeedFeet: 10 }, -1],
    ['2 % downhill', { risePercent: -2, greenSpeedFeet: 10 }, 1],
    ['a slow green', { risePercent: 0, greenSpeedFeet: 7.5 }, -1],
    ['a fast green', { risePercent: 0, greenSpeedFeet: 12.5 }, 1],
  ] as const)('asks for the right change of loft on %s, landing spot unchanged', (_, green, sign) => {
    const changes = SPOTS.map((spot) => sign * (loft({ ...spot, ...green }) - loft({ ...spot, ...LEVEL })))
    expect(Math.min(...changes)).toBeGreaterThanOrEqual(0)
    // Not the same club everywhere: a whole club moves in most places.
    expect(changes.filter((change) => change > 0).length).toBeGreaterThan(SPOTS.length / 2)
  })

  it('rolls as the published ladder says on a level green of its speed', () => {
    // Ladder A of `chip_carry_roll.csv` (common practice): roll per carry by club.
    const ladder = {
      'sand-wedge': 1,
      'pitching-wedge': 2,
      '9-iron': 3,
      '8-iron': 4,
      '7-iron': 5,
      '6-iron': 6,
    }
    const clubs = clubForLanding(player(), { carryMetres: 3, rollMetres: 9, ...LEVEL })
    for (const [name, roll] of Object.entries(ladder))
      expect(clubs.find(({ club }) => club === name)?.rollMetres).toBeCloseTo(3 * roll, 2)
    expect(clubs[0]?.club).toBe('9-iron')
  })

  it('rolls 0.80 as far 2 % uphill and 1.34 times as far downhill', () => {
    // Derived from constant deceleration, `reference/README.md` 6: 1 / (1 ± (5/7)·slope·g/a) at 10 ft.
    const roll = (risePercent: number): number =>
      clubForLanding(player(), { carryMetres: 3, rollMetres: 9, risePercent, greenSpeedFeet: 10 }).find(
        ({ club }) => club === '9-iron',
      )?.rollMetres ?? 0
    expect(roll(2) / roll(0)).toBeCloseTo(0.797, 2)
    expect(roll(-2) / roll(0)).toBeCloseTo(1.343, 2)
  })

  it("takes the professional's own ladder, and the player's own clubs only", () => {
    const own = player({ shortGame: { roll_per_carry: { '7-iron': 2.5 } } })
    const question = { carryMetres: 4, rollMetres: 10, ...LEVEL }
    expect(clubForLanding(own, question)[0]?.club).toBe('7-iron')
    const two = player({ bag: 'as-listed', clubs: [{ name: '7-iron', carry_m: 120 }, { name: '52-wedge' }] })
    expect(clubForLanding(two, question).map(({ club }) => club)).toEqual(['52-wedge', '7-iron'])
  })
})
