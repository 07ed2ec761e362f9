import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { LEVELS, playerOfLevel } from './level.ts'
import { mirrorPlayer } from './mirror-player.ts'
import type { Player } from './player.ts'
import { puttingValues } from './putting-values.ts'
import { shortGameValue } from './short-game-values.ts'

const SEXES = ['male', 'female', 'unstated'] as const
const playerOf = (handicapIndex: number, sex: Player['sex']): Player =>
  completePlayer({
    name: 'x',
    hand: 'right',
    sex,
    handicapIndex,
    bag: 'as-listed',
    clubs: ['driver', '7-iron', 'sand-wedge'].map((name) => ({ name, shots: 0, lies: {} })),
    shortGame: {},
    putting: {},
  })

/** Every number of a level that a plan depends on. */
function numbersOf(player: Player): Record<string, number> {
  return {
    ...Object.fromEntries(
      player.clubs.flatMap((club) => [
        [`${club.name} carry`, club.carryMetres],
        [`${club.name} total`, club.totalMetres],
        [`${club.name} direction`, club.directionSdDegrees],
        [`${club.name} carry spread`, club.carrySdShare],
        [`${club.name} mishits`, club.mishitShare],
        [`${club.name} mishit carry`, club.mishitCarryShare],
      ]),
    ),
    'putting direction': player.putting.directionSdDegrees,
    'putting distance': player.putting.distanceSdShare,
    'strokes lost': player.shortGame.strokesLost,
  }
}

describe('levels', () => {
  it('change smoothly from the tour to 36: no step differs from the next by more than a fifth of the largest', () => {
    const step = 0.5
    const indices = Array.from({ length: 41 / step + 1 }, (_, k) => -5 + step * k)
    for (const sex of ['male', 'female'] as const) {
      const rows = indices.map((index) => numbersOf(playerOf(index, sex)))
      for (const number of Object.keys(rows[0] ?? {})) {
        const values = rows.map((row) => row[number] ?? Number.NaN)
        const steps = values.slice(1).map((value, k) => value - (values[k] ?? Number.NaN))
        const largest = Math.max(...steps.map(Math.abs))
        const kinks = steps.slice(1).map((one, k) => Math.abs(one - (steps[k] ?? Number.NaN)))
        expect(Math.max(...kinks) / largest, `${sex} ${number}`).toBeLessThan(0.2)
        // One way from the best to the worst.
        expect(Math.min(...steps) * Math.max(...steps), `${sex} ${number}`).toBeGreaterThanOrEqual(0)
      }
    }
  })

  it('are all guesses, and worse from one to the next', () => {
    for (const sex of SEXES) {
      const players = LEVELS.map(({ name }) => playerOfLevel(name, { sex }))
      for (const player of players) expect(player.guesses.size).toBeGreaterThan(100)
      const rises = (figures: number[]): void => expect([...figures].sort((a, b) => a - b)).toEqual(figures)
      rises(players.map((player) => -(player.clubs[0]?.carryMetres ?? 0)))
      rises(players.map((player) => player.clubs[0]?.directionSdDegrees ?? 0))
      rises(players.map((player) => shortGameValue(player, 'bunker', 20)))
      rises(players.map((player) => puttingValues(player).expected(5)))
    }
  })

  it('give women the wider spreads of the rating table (Course Rating System Manual 4.4, scratch, within a quarter)', () => {
    const woman = playerOf(0, 'female')
    // 67 % on each axis: driver 210 yd 6.9 %, 7-iron 130 yd 6.8 %; direction 3.87° with the 7-iron.
    const [driver, iron] = woman.clubs
    expect(Math.abs((driver?.carrySdShare ?? 0) / 0.0689 - 1)).toBeLessThan(0.25)
    expect(Math.abs((iron?.carrySdShare ?? 0) / 0.0676 - 1)).toBeLessThan(0.25)
    expect(Math.abs((iron?.directionSdDegrees ?? 0) / 3.87 - 1)).toBeLessThan(0.25)
  })

  it('are shorter for juniors, growing year by year to the grown player', () => {
    for (const sex of SEXES) {
      const carries = [6, 8, 10, 12, 14, 16, 17, 18].map(
        (age) => playerOfLevel('30', { sex, age }).clubs[0]?.carryMetres ?? 0,
      )
      expect([...carries].sort((a, b) => a - b)).toEqual(carries)
      expect(carries.at(-1)).toBe(playerOfLevel('30', { sex }).clubs[0]?.carryMetres)
    }
    // Girls are grown earlier, but the grown men hit it further.
    const share = (sex: Player['sex']): number =>
      (playerOfLevel('30', { sex, age: 12 }).clubs[0]?.totalMetres ?? 0) /
      (playerOfLevel('30', { sex }).clubs[0]?.totalMetres ?? 1)
    expect(share('female')).toBeGreaterThan(share('male'))
  })

  it('let a known carry win over the age', () => {
    const known = completePlayer({
      name: 'x',
      hand: 'right',
      sex: 'female',
      age: 11,
      clubs: [{ name: 'driver', carry_m: 120, shots: 0, lies: {} }],
      shortGame: {},
      putting: {},
    })
    expect(known.clubs[0]).toMatchObject({ name: 'driver', carryMetres: 120, isGuess: false })
    // 120 m at eleven says more for a player than at thirty.
    const grown = completePlayer({
      name: 'x',
      hand: 'right',
      sex: 'female',
      clubs: [{ name: 'driver', carry_m: 120, shots: 0, lies: {} }],
      shortGame: {},
      putting: {},
    })
    expect(known.handicapIndex).toBeLessThan(grown.handicapIndex)
  })

  it('are the mirror image for a left-hander', () => {
    const right = playerOfLevel('15', { sex: 'male', age: 12 })
    expect({ ...mirrorPlayer(right) }).toEqual(playerOfLevel('15', { sex: 'male', age: 12, hand: 'left' }))
  })
})
