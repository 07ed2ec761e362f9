import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { chipRatios } from './chip-ratios.ts'
import { completePlayer } from './complete-player.ts'
import { parsePlayer } from './parse-player.ts'
import { LADDER_GREEN_SPEED_FEET } from './short-game-settings.ts'

// Source: three ladders of carry and roll as taught, chip_carry_roll.csv (common practice).

const [, ...rows] = readFileSync('test/fixtures/reference/chip_carry_roll.csv', 'utf8').trim().split('\n')
const taught = new Map(
  rows.map((row) => {
    const [, club = '', ...figures] = row.split(',')
    // `<1` says under one, `>2` two and more.
    const rungs = figures.filter((one) => one !== '')
    const bounds = rungs.map((one) => (one.startsWith('<') ? 0 : Number(one.replace('>', ''))))
    return [club.replace(' ', '-'), bounds] as const
  }),
)
const player = completePlayer(
  parsePlayer(
    JSON.stringify({
      schema: 'player/1',
      name: 'Ladder',
      hand: 'right',
      handicapIndex: 12,
      clubs: [...taught.keys()].map((name, index) => ({ name, carry_m: 60 + 12 * index })),
      bag: 'as-listed',
    }),
    'ladder',
  ),
)

describe('chipRatios', () => {
  it('lies within the ladders that are taught, on the green that they are for', () => {
    const ratios = chipRatios(player, LADDER_GREEN_SPEED_FEET)
    expect(ratios.length).toBeGreaterThanOrEqual(5)
    for (const { club, rollPerCarry } of ratios) {
      const ladders = taught.get(club) ?? []
      expect(rollPerCarry).toBeGreaterThanOrEqual(Math.min(...ladders))
      expect(rollPerCarry).toBeLessThanOrEqual(Math.max(...ladders))
    }
  })

  it('grows with the reading of the ramp', () => {
    const [slow, fast] = [chipRatios(player, 8), chipRatios(player, 12)]
    for (const [index, { rollPerCarry }] of fast.entries())
      expect(rollPerCarry / (slow[index]?.rollPerCarry ?? 0)).toBeCloseTo(12 / 8, 9)
  })
})
