import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { drawPlayer } from './draw-player.ts'
import { encodePlayer } from './encode-player.ts'
import { puttingDoubt, strokesLostDoubt } from './near-green-doubt.ts'
import { NEAR_GREEN_DOUBT } from './near-green-settings.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'

const golfer = (nearGreen: object): Player =>
  completePlayer(
    parsePlayer(
      JSON.stringify({ schema: 'player/1', name: 'Ilo', hand: 'right', handicapIndex: 15, ...nearGreen }),
      'test',
    ),
  )
const tested = (putts: number, balls: number): Player =>
  golfer({
    putting: { direction_sd_deg: 1.9, distance_sd_share: 0.083, shots: putts },
    shortGame: { strokes_lost: 0.38, shots: balls },
  })

describe('doubt about numbers near the green', () => {
  it('is less the more balls of test days are behind them, and a little less than of a guess after one day', () => {
    const spreads = [1, 42, 168, 1680].map((putts) => puttingDoubt(tested(putts, 0), 'direction_sd_deg'))
    expect(spreads).toEqual([...spreads].sort((a, b) => b - a))
    expect(spreads[0]).toBeLessThan(NEAR_GREEN_DOUBT.guess.spread)
    // One day's 42 putts tell little of a spread: a typed number was taken to be far surer than that.
    expect(spreads[1]).toBeGreaterThan(2 * NEAR_GREEN_DOUBT.typed.spread)
    expect(spreads[3]).toBeLessThan(0.05)
    const strokes = (player: Player): number => {
      const { share, strokes: plain } = strokesLostDoubt(player)
      return share * player.shortGame.strokesLost + plain
    }
    // 28 balls leave 0.06 to 0.07 of a stroke (`learn-test-day.test.ts` measures what they tell).
    expect(strokes(tested(0, 28))).toBeGreaterThan(0.055)
    expect(strokes(tested(0, 28))).toBeLessThan(0.07)
    expect(strokes(tested(0, 280))).toBeLessThan(0.03)
  })

  it('is what a plan draws, and the counts stay in the file', () => {
    const spreadOf = (player: Player): number => {
      const drawn = Array.from({ length: 1000 }, (_, seed) =>
        Math.log(drawPlayer(player, seed + 1).putting.directionSdDegrees),
      )
      const mean = drawn.reduce((sum, one) => sum + one / drawn.length, 0)
      return Math.sqrt(drawn.reduce((sum, one) => sum + (one - mean) ** 2 / drawn.length, 0))
    }
    const player = tested(420, 280)
    // A thousand draws: three standard errors are 7 per cent.
    expect(Math.abs(spreadOf(player) / puttingDoubt(player, 'direction_sd_deg') - 1)).toBeLessThan(0.07)
    expect(spreadOf(tested(0, 0))).toBeLessThan(spreadOf(player))
    const again = completePlayer(parsePlayer(encodePlayer(player), 'again'))
    expect(again.putting.shots).toBe(420)
    expect(again.shortGame.shots).toBe(280)
    expect(encodePlayer(golfer({}))).not.toMatch(/"shots": null/)
  })

  it('refuses a count that is none', () => {
    expect(() => golfer({ putting: { shots: -1 } })).toThrow(/putting\.shots/)
    expect(() => golfer({ shortGame: { shots: 'many' } })).toThrow(/shortGame\.shots/)
  })
})
