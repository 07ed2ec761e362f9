import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { drawPlayer } from './draw-player.ts'
import { encodePlayer } from './encode-player.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'
import { shortShots } from './short-shots.ts'

const text = (shortGame: object): string =>
  JSON.stringify({ schema: 'player/1', name: 'Test', hand: 'right', handicapIndex: 14, shortGame })
const read = (shortGame: object): Player => completePlayer(parsePlayer(text(shortGame), 'test'))

describe('the short game of a player file', () => {
  it('fills spreads and ladder from the level, and marks them as guesses', () => {
    const player = read({})
    expect(player.shortGame.rollPerCarry).toMatchObject({ 'pitching-wedge': 2, '8-iron': 4 })
    expect(player.shortGame.rollPerCarry).not.toHaveProperty('driver')
    for (const path of ['carry_sd_share', 'direction_sd_deg', 'poor_share', 'roll_per_carry.8-iron'])
      expect(player.guesses).toContain(`shortGame.${path}`)
    const worse = read({ strokes_lost: 1 })
    expect(worse.shortGame.poorShare).toBeGreaterThan(player.shortGame.poorShare ?? 1)
  })

  it("keeps the professional's numbers through a file, and fills the guesses again", () => {
    const player = read({ poor_share: 0.2, roll_per_carry: { '8-iron': 2.5 } })
    const again = completePlayer(parsePlayer(encodePlayer(player), 'test'))
    expect(again).toEqual(player)
    expect(again.guesses).not.toContain('shortGame.roll_per_carry.8-iron')
    expect(again.guesses).toContain('shortGame.roll_per_carry.9-iron')
    const chip = shortShots(again, 'fairway').find(({ club, kind }) => club === '8-iron' && kind === 'chip')
    expect(chip?.rollPerCarry).toBe(2.5)
  })

  it.each([
    ['a roll of nothing', { roll_per_carry: { '8-iron': 0 } }, 'MAR-PLAYER-013', 'roll_per_carry.8-iron'],
    ['an unknown club', { roll_per_carry: { banjo: 2 } }, 'MAR-PLAYER-006', 'roll_per_carry.banjo'],
    ['a share above what can be', { poor_share: 0.9 }, 'MAR-PLAYER-013', 'poor_share'],
    ['words for a number', { carry_sd_share: 'wide' }, 'MAR-PLAYER-005', 'carry_sd_share'],
    ['a field that is none', { roll_per_cary: {} }, 'MAR-PLAYER-004', 'roll_per_cary'],
  ])('refuses %s', (_, shortGame, code, field) => {
    expect(() => parsePlayer(text(shortGame), 'test')).toThrow(
      expect.objectContaining({ code, where: expect.stringContaining(field) }),
    )
  })

  it('draws the ladder of a guess further from what is stated than a typed one', () => {
    const spread = (player: Player): number => {
      const rolls = Array.from({ length: 200 }, (_, seed) =>
        Math.log((drawPlayer(player, seed).shortGame.rollPerCarry?.['8-iron'] ?? 0) / 4),
      )
      return Math.sqrt(rolls.reduce((sum, roll) => sum + roll ** 2, 0) / rolls.length)
    }
    const typed = spread(read({ roll_per_carry: { '8-iron': 4 } }))
    expect(typed).toBeGreaterThan(0.03)
    expect(spread(read({}))).toBeGreaterThan(2 * typed)
  })
})
