import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { encodePlayer } from './encode-player.ts'
import { isCarryFault, readOwnCarries, withOwnCarries } from './own-carries.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'

const YARD = 0.9144

function example(id: string): Player {
  const path = fileURLToPath(new URL(`../../../examples/${id}.player.json`, import.meta.url))
  return completePlayer(parsePlayer(readFileSync(path, 'utf8'), path))
}

const brack = example('aldous-brack')
const carryOf = (player: Player, name: string): number =>
  player.clubs.find((club) => club.name === name)?.carryMetres ?? Number.NaN

describe('reading own carries', () => {
  it('takes figures in the reader’s units, with a unit or a decimal comma, and leaves blanks out', () => {
    const read = readOwnCarries(
      { driver: '205', '7-iron': ' 126 m', '52-wedge': '', 'pitching-wedge': '104,5' },
      'yards',
    )
    expect(read).toEqual({ driver: 205 * YARD, '7-iron': 126, 'pitching-wedge': 104.5 * YARD })
    expect(readOwnCarries({ '52-wedge': '90' }, 'metres')).toEqual({ '52-wedge': 90 })
    expect(readOwnCarries({}, 'yards')).toEqual({})
  })

  it.each([
    ['a slip', { driver: '20' }, 'MAR-ANSWER-003'],
    ['no figure', { driver: 'far' }, 'MAR-ANSWER-007'],
    ['an iron past the driver', { driver: '150', '7-iron': '170' }, 'MAR-ANSWER-007'],
  ])('refuses %s with its code', (_, texts, code) => {
    const read = readOwnCarries(texts, 'yards')
    expect(isCarryFault(read) && read.code).toBe(code)
    expect(isCarryFault(readOwnCarries({ driver: '205' }, 'yards'))).toBe(false)
  })
})

describe('a player with own carries', () => {
  const carries = { driver: 210, '7-iron': 140, 'pitching-wedge': 110 }
  const own = withOwnCarries(brack, carries)

  it('has them as they were typed, said and not measured', () => {
    for (const [club, metres] of Object.entries(carries)) {
      expect(carryOf(own, club)).toBe(metres)
      expect(own.guesses.has(`clubs.${club}.carry_m`)).toBe(false)
    }
    expect(own.said?.carries).toEqual(Object.keys(carries))
    expect(own.clubs.map(({ name }) => name)).toEqual(brack.clubs.map(({ name }) => name))
  })

  it('has every other length filled in between and marked as a guess', () => {
    const others = own.clubs.filter(({ name }) => !(name in carries))
    expect(others.length).toBe(7)
    for (const { name, isGuess } of others) {
      expect(isGuess).toBe(true)
      expect(own.guesses.has(`clubs.${name}.carry_m`)).toBe(true)
      expect(own.guesses.has(`clubs.${name}.total_m`)).toBe(true)
    }
    const between = ['5-wood', '5-hybrid', '6-iron'].map((name) => carryOf(own, name))
    for (const carry of between) {
      expect(carry).toBeGreaterThan(140)
      expect(carry).toBeLessThan(210)
    }
    // The bag was some 11 % shorter before: beyond the last typed club it grows in proportion.
    expect(carryOf(own, 'sand-wedge')).toBeGreaterThan(carryOf(brack, 'sand-wedge'))
  })

  it('keeps how the shots spread and bend, and where the ball is played from', () => {
    for (const club of own.clubs) {
      const before = brack.clubs.find(({ name }) => name === club.name)
      expect(club.curveShare).toBe(before?.curveShare)
      expect(club.leftShare).toBe(before?.leftShare)
      expect(club.shots).toBe(0)
    }
    expect(own.clubs[0]?.directionSdDegrees).toBe(brack.clubs[0]?.directionSdDegrees)
    expect(own.putting).toEqual(brack.putting)
    expect(own.handicapIndex).toBe(brack.handicapIndex)
  })

  it('is the same when read back from a file, and the player as they were without any', () => {
    expect(completePlayer(parsePlayer(encodePlayer(own), 'own'))).toEqual(own)
    expect(withOwnCarries(brack, {})).toBe(brack)
  })
})
