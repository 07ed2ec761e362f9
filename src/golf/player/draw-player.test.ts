import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { drawPlayer } from './draw-player.ts'
import { mirrorPlayer } from './mirror-player.ts'
import type { Player } from './player.ts'
import { puttingTableAt } from './putting-table.ts'

const typed = { carry_m: 130, direction_sd_deg: 5, carry_sd_share: 0.08, mishit_share: 0.15 }
const playerWith = (shots: number | null): Player =>
  completePlayer({
    name: 'x',
    hand: 'right',
    sex: 'male',
    handicapIndex: 15,
    clubs: shots === null ? [] : [{ name: '7-iron', shots, lies: {}, ...typed }],
    shortGame: {},
    putting: {},
  })
const DRAWS = Array.from({ length: 600 }, (_, seed) => seed)
const ironOf = (player: Player): Player['clubs'][number] =>
  player.clubs.find((club) => club.name === '7-iron')!
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
const sd = (values: readonly number[]): number =>
  Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)))
const correlation = (a: readonly number[], b: readonly number[]): number =>
  mean(a.map((value, index) => (value - mean(a)) * ((b[index] ?? 0) - mean(b)))) / (sd(a) * sd(b))

describe('drawPlayer', () => {
  it('gives the same player for the same seed and another for another', () => {
    const player = playerWith(null)
    expect(drawPlayer(player, 7)).toEqual(drawPlayer(player, 7))
    expect(drawPlayer(player, 7)).not.toEqual(drawPlayer(player, 8))
  })

  it('has the stated spreads and carries as its mean', () => {
    const player = playerWith(null)
    const drawn = DRAWS.map((seed) => ironOf(drawPlayer(player, seed)))
    for (const number of ['directionSdDegrees', 'carrySdShare', 'carryMetres'] as const) {
      const values = drawn.map((club) => club[number])
      expect(Math.abs(mean(values) - ironOf(player)[number])).toBeLessThan(
        (4 * sd(values)) / Math.sqrt(DRAWS.length),
      )
    }
  })

  it('is surer of typed numbers than of guesses, and surer the more shots there are', () => {
    for (const number of ['directionSdDegrees', 'carrySdShare', 'carryMetres', 'mishitShare'] as const) {
      const spreadAfter = (shots: number | null): number => {
        const player = playerWith(shots)
        return sd(DRAWS.map((seed) => ironOf(drawPlayer(player, seed))[number] / ironOf(player)[number]))
      }
      expect(spreadAfter(0), number).toBeLessThan(spreadAfter(null))
      const spreads = [null, 10, 100, 1000].map(spreadAfter)
      expect(
        [...spreads].sort((a, b) => b - a),
        number,
      ).toEqual(spreads)
    }
  })

  // A normal prior of variance v and n good strikes, each with information i, leave 1 / (1/v + n·i): the closed form.
  it('takes numbers with shots behind them as a guess that those shots have informed', () => {
    const good = 10 * 0.85
    const left = (variance: number, information: number): number =>
      1 / Math.sqrt(1 / variance + good * information)
    const log = (number: 'directionSdDegrees' | 'carryMetres'): number =>
      sd(DRAWS.map((seed) => Math.log(ironOf(drawPlayer(playerWith(10), seed))[number])))
    expect(log('directionSdDegrees') / left(0.15 ** 2 + 0.1 ** 2, 2)).toBeCloseTo(1, 1)
    expect(log('carryMetres') / left(0.05 ** 2 + 0.02 ** 2, 1 / typed.carry_sd_share ** 2)).toBeCloseTo(1, 1)
  })

  it('learns at the rate of the closed form: after n shots a spread is known to about 1/√(2n)', () => {
    const player = playerWith(4000)
    const good = 4000 * 0.85
    const spread = sd(DRAWS.map((seed) => Math.log(ironOf(drawPlayer(player, seed)).directionSdDegrees)))
    expect(spread * Math.sqrt(2 * good)).toBeGreaterThan(0.85)
    expect(spread * Math.sqrt(2 * good)).toBeLessThan(1.05)
  })

  it('moves clubs together: one player’s clubs share most of what is not known', () => {
    const player = playerWith(null)
    const drawn = DRAWS.map((seed) => drawPlayer(player, seed))
    const log = (name: string): number[] =>
      drawn.map((one) => Math.log(one.clubs.find((club) => club.name === name)!.directionSdDegrees))
    expect(correlation(log('driver'), log('9-iron'))).toBeGreaterThan(0.55)
    expect(correlation(log('driver'), log('9-iron'))).toBeLessThan(0.85)
  })

  it('keeps every number possible', () => {
    const player = playerWith(null)
    for (const seed of DRAWS.slice(0, 150)) {
      const one = drawPlayer(player, seed)
      for (const club of one.clubs) {
        expect(club.carryMetres).toBeGreaterThan(0)
        expect(club.totalMetres).toBeGreaterThan(club.carryMetres)
        expect(club.mishitShare).toBeGreaterThan(0)
        expect(club.mishitShare).toBeLessThan(1)
        expect(club.leftShare * club.rightShare).toBeCloseTo(1, 12)
      }
    }
  })

  it('draws the mirrored player as the mirror of the draw', () => {
    for (const player of [playerWith(null), playerWith(20)]) {
      for (const seed of DRAWS.slice(0, 20)) {
        const drawn = drawPlayer(mirrorPlayer(player), seed)
        const mirrored = mirrorPlayer(drawPlayer(player, seed))
        drawn.clubs.forEach((club, index) => {
          const other = mirrored.clubs[index]!
          expect(club.leftShare).toBeCloseTo(other.leftShare, 12)
          expect(club.rightShare).toBeCloseTo(other.rightShare, 12)
          expect(club.carryMetres).toBe(other.carryMetres)
        })
      }
    }
  })

  it('needs three putting tables at most', () => {
    const player = playerWith(null)
    const keys = new Set(DRAWS.map((seed) => drawPlayer(player, seed).putting.directionSdDegrees))
    expect(keys.size).toBe(3)
    expect(
      puttingTableAt(
        Float64Array.from({ length: 115 }, (_, index) => index),
        3,
      ),
    ).toBe(30)
  })
})
