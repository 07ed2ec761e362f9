import { describe, expect, it } from 'vitest'
import { checkPlayer } from './check-player.ts'

const player = (name: string, age?: number): string =>
  JSON.stringify({ schema: 'player/1', name, age, hand: 'left', handicapIndex: 30 })

describe('checkPlayer', () => {
  it('takes a minor by first name and a grown-up by the whole', () => {
    expect(checkPlayer(player('Wren', 11), 'players/wren').name).toBe('Wren')
    expect(checkPlayer(player('Wren Loam', 18), 'players/wren').name).toBe('Wren Loam')
  })

  it('refuses a minor by more than a first name', () => {
    expect(() => checkPlayer(player('Wren Loam', 17), 'players/wren')).toThrow(
      expect.objectContaining({ code: 'MAR-PLAYER-015', where: 'players/wren: name' }),
    )
  })
})
