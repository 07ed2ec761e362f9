import { describe, expect, it } from 'vitest'
import { hitFromLie, type LieTimes } from '../../../tools/pattern-calibration/hit-from-lie.ts'
import { hitShots } from '../../../tools/pattern-calibration/hit-shots.ts'
import { truePlayer } from '../../../tools/pattern-calibration/true-player.ts'
import { completePlayer } from './complete-player.ts'
import { encodePlayer } from './encode-player.ts'
import { type LearnedPlayer, learnPlayer } from './learn-player.ts'
import { lieEffect } from './lie-effects.ts'
import { mirrorPlayer } from './mirror-player.ts'
import { parsePlayer } from './parse-player.ts'
import type { ClubLies, Player } from './player.ts'

const threeClubs = (lies: ClubLies = {}): Player =>
  completePlayer({
    name: 'three clubs',
    hand: 'right',
    sex: 'male',
    handicapIndex: 15,
    bag: 'as-listed',
    clubs: ['driver', '6-iron', 'pitching-wedge'].map((name) => ({ name, shots: 0, lies })),
    shortGame: {},
    putting: {},
  })

const guess = threeClubs()
const truth = truePlayer(guess, 77)
const planted: LieTimes = { carry: 0.9, direction: 1.25, distance: 0.85, mishit: 1.4 }
const FACTORS = ['carry', 'direction', 'distance', 'mishit'] as const

/** Fairway shots, and so many from the rough with both irons, by a player whose rough is `planted`. */
function learned(count: number, before = guess, seed = 5): LearnedPlayer {
  const rough = hitFromLie(truth, guess, 'rough', planted, count, seed + 1)
  return learnPlayer(before, [
    ...hitShots(truth, guess, 300, seed),
    ...rough.filter(({ club }) => club !== 'driver'),
  ])
}

describe('lies learned from shots', () => {
  it('finds the planted factors from many shots', () => {
    const { lies } = learned(500)
    expect(lies.map(({ lie, shots }) => [lie, shots])).toEqual([['rough', 1000]])
    const { factors, times } = lies[0]!
    expect(Math.abs(times.carry / planted.carry - 1)).toBeLessThan(0.015)
    expect(Math.abs(times.direction / planted.direction - 1)).toBeLessThan(0.1)
    expect(Math.abs(times.distance / planted.distance - 1)).toBeLessThan(0.1)
    for (const number of FACTORS) {
      const { before, ninety, half } = factors[number]
      const value = before * planted[number]
      expect(value, number).toBeGreaterThan(ninety[0])
      expect(value, number).toBeLessThan(ninety[1])
      expect(half[1] - half[0]).toBeLessThan(ninety[1] - ninety[0])
    }
  })

  it('stays near what was assumed with few shots, and goes further the more there are', () => {
    const offAfter = (count: number): number =>
      Math.abs(Math.log(learned(count).lies[0]!.times.carry / planted.carry))
    const all = Math.abs(Math.log(planted.carry))
    expect(offAfter(1)).toBeGreaterThan(0.6 * all)
    expect(offAfter(30)).toBeLessThan(0.45 * all)
  })

  it('writes them into the clubs that are used there, from where a plan takes them', () => {
    const { player, lies } = learned(40)
    const [driver, iron] = player.clubs
    expect(driver!.lies).toEqual({})
    expect(iron!.lies).toMatchObject({ rough: { shots: 80 } })
    const again = completePlayer(parsePlayer(encodePlayer(player), 'three.player.json'))
    for (const name of ['6-iron', 'pitching-wedge']) {
      const ours = lieEffect('rough', name, guess)
      const own = lieEffect('rough', name, again)
      expect(own).not.toHaveProperty('shots')
      for (const number of FACTORS)
        expect(own[number] / ours[number], number).toBeCloseTo(lies[0]!.times[number], 10)
      // Long rough takes more from this player too, by the proportion that is assumed of all.
      const long = (one: Player): number =>
        lieEffect('rough', name, one, { rough: 'long' }).carry / lieEffect('rough', name, one).carry
      expect(long(again)).toBeCloseTo(
        long({ ...guess, clubs: again.clubs.map((club) => ({ ...club, lies: {} })) }),
        10,
      )
    }
  })

  it('learns on from what was learned: the more shots are behind it, the less new ones move it', () => {
    const first = learned(100).player
    const asAssumed = hitFromLie(
      truth,
      guess,
      'rough',
      { carry: 1, direction: 1, distance: 1, mishit: 1 },
      10,
      9,
    )
    const few = asAssumed.filter(({ club }) => club !== 'driver')
    const carryOf = (player: Player): number => lieEffect('rough', '6-iron', player).carry
    const { player } = learnPlayer(first, [...few, ...hitShots(truth, guess, 40, 12)])
    expect(player.clubs[1]!.lies).toMatchObject({ rough: { shots: 220 } })
    const moved = (carryOf(player) - carryOf(first)) / (carryOf(guess) - carryOf(first))
    expect(moved).toBeGreaterThan(0)
    expect(moved).toBeLessThan(0.4)
  })

  it('leaves lies alone from which nothing was hit, and a club that the player keeps out of one', () => {
    expect(learnPlayer(guess, hitShots(truth, guess, 5, 1)).lies).toEqual([])
    expect(learnPlayer(guess, hitShots(truth, guess, 5, 1)).player.clubs[1]!.lies).toEqual({})
    const kept = learned(10, threeClubs({ rough: false })).player
    expect(kept.clubs[1]!.lies).toEqual({ rough: false })
  })

  it('is the same in a mirror', () => {
    const shots = [
      ...hitShots(truth, guess, 20, 3),
      ...hitFromLie(truth, guess, 'bunker', planted, 8, 4).filter(({ club }) => club !== 'driver'),
    ]
    const mirrored = shots.map((shot) => ({ ...shot, offlineMetres: -shot.offlineMetres! }))
    expect(learnPlayer(mirrorPlayer(guess), mirrored).lies).toEqual(learnPlayer(guess, shots).lies)
  })
})
