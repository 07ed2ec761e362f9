import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { howSure } from './how-sure.ts'
import type { Player } from './player.ts'
import { DOUBT } from './settings.ts'

const player: Player = completePlayer({
  name: 'x',
  hand: 'right',
  sex: 'male',
  handicapIndex: 15,
  clubs: [{ name: '7-iron', carry_m: 120, shots: 0, lies: {} }],
  shortGame: {},
  putting: {},
})
const sure = howSure(player)
const iron = sure.find(({ name }) => name === '7-iron')!

describe('howSure', () => {
  it('gives the draws’ eight in ten: the stated doubt of a logarithm, 1.2816 times to each side', () => {
    const sd = Math.hypot(DOUBT.carry.typed.shared, DOUBT.carry.typed.own)
    expect(Math.log(iron.carryMetres.high / iron.carryMetres.low) / 2 / 1.2816).toBeCloseTo(sd, 2)
    const spread = Math.hypot(DOUBT.spread.guess.shared, DOUBT.spread.guess.own)
    expect(Math.log(iron.spreadMetres.high / iron.spreadMetres.low) / 2 / 1.2816).toBeCloseTo(spread, 1)
  })

  it('is less sure of a carry from memory than of a measured one, and surer than of a guess', () => {
    const widthOf = (carries: readonly string[], name: string, clubs = player.clubs): number => {
      const { low, high } = howSure({ ...player, clubs, said: { carries } }).find(
        (one) => one.name === name,
      )!.carryMetres
      return Math.log(high / low) / 2 / 1.2816
    }
    const said = Math.hypot(DOUBT.carry.said.shared, DOUBT.carry.said.own)
    expect(widthOf(['7-iron'], '7-iron')).toBeCloseTo(said, 2)
    expect(widthOf(['7-iron'], '8-iron')).toBeGreaterThan(widthOf([], '8-iron'))
    expect(widthOf(['7-iron'], '8-iron')).toBeLessThan(
      Math.hypot(DOUBT.carry.guess.shared, DOUBT.carry.guess.own),
    )
    // Once shots are there they speak for themselves.
    const shot = player.clubs.map((club) => (club.name === '7-iron' ? { ...club, shots: 40 } : club))
    expect(widthOf(['7-iron'], '7-iron', shot)).toBe(widthOf([], '7-iron', shot))
  })

  it('says what is a guess', () => {
    expect(iron.carryMetres.isGuess).toBe(false)
    expect(iron.spreadMetres.isGuess).toBe(true)
    expect(sure.filter(({ carryMetres }) => !carryMetres.isGuess)).toHaveLength(1)
  })

  it('narrows with ten shots as precisions add up, and never widens', () => {
    const width = ({ low, high }: { low: number; high: number }): number => Math.log(high / low) / 2 / 1.2816
    const club = player.clubs.find(({ name }) => name === '7-iron')!
    const good = 10 * (1 - club.mishitShare)
    // Conjugate normal: 1 / variance after = 1 / variance before + n / share².
    const before = width(iron.carryMetres)
    expect(1 / width(iron.carryMetres.then) ** 2).toBeCloseTo(
      1 / before ** 2 + good / club.carrySdShare ** 2,
      -1,
    )
    for (const { carryMetres, spreadMetres, mishitShare } of sure)
      for (const { low, value, high, then } of [carryMetres, spreadMetres, mishitShare]) {
        expect(then.low).toBeGreaterThan(low)
        expect(then.high).toBeLessThan(high)
        expect(value).toBeGreaterThan(low)
        expect(value).toBeLessThan(high)
      }
  })
})
