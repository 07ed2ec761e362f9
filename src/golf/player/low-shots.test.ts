import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { lowShots } from './low-shots.ts'
import { mirrorPlayer } from './mirror-player.ts'
import { parsePlayer } from './parse-player.ts'

const player = completePlayer(
  parsePlayer(
    JSON.stringify({ schema: 'player/1', name: 'Test', hand: 'right', handicapIndex: 14, sex: 'female' }),
    'test',
  ),
)

describe('low shots', () => {
  // Common practice: punches with long and middle irons, which fly part of the carry and run; one chip-out.
  it('are a punch with every long or middle iron the player owns, and one chip-out', () => {
    const shots = lowShots(player)
    const irons = player.clubs.filter(({ name }) => /^[1-8]-iron$/.test(name)).map(({ name }) => name)
    expect(irons.length).toBeGreaterThan(1)
    expect(shots.filter(({ shape }) => shape === 'punch').map(({ club }) => club)).toEqual(irons)
    expect(shots.filter(({ shape }) => shape === 'chip-out').map(({ club }) => club)).toEqual(['7-iron'])
    for (const { club, stock } of shots) {
      const full = player.clubs.find(({ name }) => name === club)
      expect(stock.carryMetres).toBeLessThan(0.7 * (full?.carryMetres ?? 0))
      expect(stock.totalMetres / stock.carryMetres).toBeGreaterThan(1.3)
    }
  })

  it('are none without irons, and mirrored for a left-hander', () => {
    expect(lowShots({ clubs: player.clubs.filter(({ name }) => !name.endsWith('-iron')) })).toEqual([])
    const mirror = lowShots(mirrorPlayer(player))
    for (const [index, { stock }] of lowShots(player).entries()) {
      expect(mirror[index]?.stock.leftShare).toBe(stock.rightShare)
      expect(mirror[index]?.stock.curveShare).toBeCloseTo(-stock.curveShare, 12)
    }
  })
})
