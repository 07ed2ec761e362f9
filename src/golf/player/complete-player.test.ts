import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CLUB_KINDS } from './club-names.ts'
import { completePlayer } from './complete-player.ts'
import type { Player } from './player.ts'
import type { ClubFile, PlayerFile } from './player-file.ts'

const EMPTY: PlayerFile = { name: 'x', hand: 'right', sex: 'unstated', clubs: [], shortGame: {}, putting: {} }
const club = (name: string, numbers: Partial<ClubFile> = {}): ClubFile => ({
  name,
  shots: 0,
  lies: {},
  ...numbers,
})
const carries = (player: Player): number[] => player.clubs.map((one) => one.carryMetres)
const carryOf = (player: Player, name: string): number =>
  player.clubs.find((one) => one.name === name)?.carryMetres ?? Number.NaN

describe('completePlayer', () => {
  it('gives thirteen clubs in order of carry, everything a guess, to a player known by index only', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -10, max: 54, noNaN: true }),
        fc.constantFrom('male', 'female', 'unstated'),
        (handicapIndex, sex) => {
          const player = completePlayer({ ...EMPTY, handicapIndex, sex })
          expect(player.clubs).toHaveLength(13)
          expect(carries(player)).toEqual([...carries(player)].sort((a, b) => b - a))
          expect(player.clubs.every((one) => one.isGuess && one.totalMetres > one.carryMetres)).toBe(true)
          // 13 clubs of ten numbers, two of putting, four of the short game, and a rung of the ladder for each club that chips.
          const rungs = Object.keys(player.shortGame.rollPerCarry ?? {}).length
          expect(rungs).toBeGreaterThan(6)
          expect(player.guesses.size).toBe(136 + rungs)
        },
      ),
    )
  })

  it('gives a better index more length, less spread and fewer mishits with every club', () => {
    for (const sex of ['male', 'female'] as const) {
      for (let handicap = -5; handicap < 50; handicap += 5) {
        const clubs = ['driver', '5-wood', '7-iron', 'sand-wedge'].map((name) => club(name))
        const better = completePlayer({ ...EMPTY, sex, bag: 'as-listed', clubs, handicapIndex: handicap })
        const worse = completePlayer({ ...EMPTY, sex, bag: 'as-listed', clubs, handicapIndex: handicap + 5 })
        better.clubs.forEach((one, index) => {
          const other = worse.clubs[index]!
          expect(one.carryMetres).toBeGreaterThan(other.carryMetres)
          expect(one.directionSdDegrees).toBeLessThan(other.directionSdDegrees)
          expect(one.carrySdShare).toBeLessThan(other.carrySdShare)
          expect(one.mishitShare).toBeLessThan(other.mishitShare)
          expect(one.mishitCarryShare).toBeGreaterThan(other.mishitCarryShare)
        })
        expect(better.putting.directionSdDegrees).toBeLessThanOrEqual(worse.putting.directionSdDegrees)
        expect(better.shortGame.strokesLost).toBeLessThan(worse.shortGame.strokesLost)
      }
    }
  })

  it('keeps every typed number and does not call it a guess', () => {
    const typed = {
      carry_m: 162.8,
      total_m: 179.2,
      direction_sd_deg: 6.5,
      left_share: 1.18,
      right_share: 0.82,
      curve_share: -0.04,
      carry_sd_share: 0.075,
      mishit_share: 0.17,
      mishit_carry_share: 0.55,
      mishit_carry_sd_share: 0.18,
    }
    const player = completePlayer({ ...EMPTY, handicapIndex: 17.6, clubs: [club('5-wood', typed)] })
    const wood = player.clubs.find((one) => one.name === '5-wood')!
    expect(wood).toMatchObject({
      carryMetres: 162.8,
      totalMetres: 179.2,
      directionSdDegrees: 6.5,
      leftShare: 1.18,
      rightShare: 0.82,
      curveShare: -0.04,
      carrySdShare: 0.075,
      mishitShare: 0.17,
      mishitCarryShare: 0.55,
      mishitCarrySdShare: 0.18,
      isGuess: false,
    })
    expect([...player.guesses].filter((path) => path.startsWith('clubs.5-wood'))).toEqual([])
    expect(player.guesses.has('clubs.7-iron.carry_m')).toBe(true)
  })

  it('lets one known carry set the whole ladder', () => {
    const short = completePlayer({ ...EMPTY, handicapIndex: 15, clubs: [club('7-iron', { carry_m: 100 })] })
    const long = completePlayer({ ...EMPTY, handicapIndex: 15, clubs: [club('7-iron', { carry_m: 140 })] })
    for (const name of ['driver', '9-iron', 'sand-wedge']) {
      expect(carryOf(long, name)).toBeGreaterThan(carryOf(short, name) * 1.2)
    }
    // A slow swing's gaps are narrower, in metres and in share.
    expect(carryOf(short, 'driver') / carryOf(short, '7-iron')).toBeLessThan(
      carryOf(long, 'driver') / carryOf(long, '7-iron'),
    )
  })

  it('guesses an index from a carry: the index whose drive it is', () => {
    const asked = completePlayer({ ...EMPTY, sex: 'male', handicapIndex: 12 })
    const found = completePlayer({
      ...EMPTY,
      sex: 'male',
      clubs: [club('driver', { carry_m: carryOf(asked, 'driver') })],
    })
    expect(found.handicapIndex).toBeCloseTo(12, 1)
    expect(found.guesses.has('handicapIndex')).toBe(true)
  })

  it('puts a missing club between its known neighbours, whatever they are', () => {
    const names = CLUB_KINDS.filter((kind) => /iron|wedge|driver/.test(kind.name)).map((kind) => kind.name)
    fc.assert(
      fc.property(
        fc.subarray(names, { minLength: 2, maxLength: 6 }),
        fc.double({ min: 60, max: 290, noNaN: true }),
        fc.double({ min: 0.6, max: 0.99, noNaN: true }),
        (known, longest, step) => {
          const clubs = known.map((name, index) => club(name, { carry_m: longest * step ** index }))
          const player = completePlayer({ ...EMPTY, handicapIndex: 15, clubs, bag: 'fill' })
          for (const [index, one] of clubs.entries()) {
            expect(carryOf(player, one.name)).toBe(one.carry_m)
            const next = clubs[index + 1]
            if (next === undefined) continue
            const between = CLUB_KINDS.map((kind) => kind.name)
            const inside = between.slice(between.indexOf(one.name) + 1, between.indexOf(next.name))
            for (const name of inside) {
              const carry = carryOf(player, name)
              if (Number.isNaN(carry)) continue
              expect(carry).toBeLessThanOrEqual((one.carry_m ?? 0) * (1 + 1e-12))
              expect(carry).toBeGreaterThanOrEqual((next.carry_m ?? 0) * (1 - 1e-12))
            }
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  it('lets a typed pattern inform the clubs beside it, in part', () => {
    const typed = { direction_sd_deg: 9, left_share: 1.4, curve_share: -0.05, mishit_share: 0.3 }
    const plain = completePlayer({ ...EMPTY, handicapIndex: 15 })
    const informed = completePlayer({ ...EMPTY, handicapIndex: 15, clubs: [club('7-iron', typed)] })
    for (const one of informed.clubs.filter((other) => other.name !== '7-iron')) {
      const before = plain.clubs.find((other) => other.name === one.name)!
      const ratio = 9 / plain.clubs.find((other) => other.name === '7-iron')!.directionSdDegrees
      expect(one.directionSdDegrees / before.directionSdDegrees).toBeGreaterThan(1)
      expect(one.directionSdDegrees / before.directionSdDegrees).toBeLessThan(ratio)
      expect(one.mishitShare).toBeGreaterThan(before.mishitShare)
      expect(one.mishitShare).toBeLessThan(1)
      expect(one.curveShare).toBeGreaterThan(-0.05)
      expect(one.curveShare).toBeLessThan(-0.02)
      expect(one.leftShare).toBeGreaterThan(1)
      expect(one.rightShare).toBe(1)
      expect(one.carrySdShare).toBe(before.carrySdShare)
      expect(informed.guesses.has(`clubs.${one.name}.direction_sd_deg`)).toBe(true)
    }
  })

  it('fills the bag of a player who lists a few clubs, leaves a listed bag alone, and obeys `bag`', () => {
    const three = [club('driver'), club('7-iron'), club('52-wedge')]
    const filled = completePlayer({ ...EMPTY, handicapIndex: 10, clubs: three })
    expect(filled.clubs).toHaveLength(13)
    // The listed wedge stands in for the gap wedge of nearly its loft.
    expect(filled.clubs.some((one) => one.name === 'gap-wedge')).toBe(false)
    expect(
      completePlayer({ ...EMPTY, handicapIndex: 10, clubs: three, bag: 'as-listed' }).clubs,
    ).toHaveLength(3)
    const eight = [
      'driver',
      '5-wood',
      '6-iron',
      '7-iron',
      '8-iron',
      '9-iron',
      'pitching-wedge',
      'sand-wedge',
    ].map((name) => club(name))
    expect(completePlayer({ ...EMPTY, handicapIndex: 10, clubs: eight }).clubs).toHaveLength(8)
  })

  it('takes the usual run off a total typed without its carry', () => {
    const player = completePlayer({ ...EMPTY, handicapIndex: 10, clubs: [club('driver', { total_m: 200 })] })
    const driver = player.clubs[0]!
    expect(driver.totalMetres).toBe(200)
    // Common practice, and the Course Rating system: a drive runs about 20 yards.
    expect((200 - driver.carryMetres) / 0.9144).toBeGreaterThan(15)
    expect((200 - driver.carryMetres) / 0.9144).toBeLessThan(25)
    expect(driver.isGuess).toBe(true)
  })
})
