import { playerOfLevel } from './level.ts'
import type { LearnedNearGreen } from './near-green-posterior.ts'
import type { Lie, Player } from './player.ts'
import { puttingValues } from './putting-values.ts'
import { shortGameValue } from './short-game-values.ts'
import { costsOf } from './test-day/fit-short-test.ts'
import { LONGEST_PUTT_METRES, SHORT_CURVE_METRES } from './test-day/test-day-settings.ts'
import type { TestDayResults } from './test-day-results.ts'

/** One quantity by distance: before the test, now with the band that holds it nine times in ten, and on the tour. */
export interface TestedCurve {
  readonly points: readonly {
    readonly metres: number
    readonly before: number
    readonly now: number
    readonly low: number
    readonly high: number
    readonly tour: number
  }[]
  /** What was played on the day itself, by station. */
  readonly played: readonly { readonly metres: number; readonly value: number; readonly balls: number }[]
}

/** What a test day says of putting and short game by distance. */
export interface TestDayCurves {
  /** Chances, 0 to 1. */
  readonly onePutt: TestedCurve
  readonly threePutts: TestedCurve
  /** Expected strokes to hole out, by lie. */
  readonly short: readonly { readonly lie: Lie; readonly strokes: TestedCurve }[]
}

/** A curve has so many pieces: enough for its bend at short putts. */
const STEPS = 120

/**
 * The curves of a test day. The tour line of putting is that of the level, which holds the published shares within two in
 * a hundred (docs/published-values.md); that of the short game is the published table itself (Broadie 2012, table 9).
 */
export function testDayCurves(
  player: Player,
  learned: LearnedNearGreen,
  { stations }: TestDayResults,
): TestDayCurves {
  const tour = playerOfLevel('tour')
  const putting = (count: 0 | 2, bandOf: LearnedNearGreen['onePuttBand']): TestedCurve['points'] =>
    distances(0.3, LONGEST_PUTT_METRES).map((metres) => {
      const [before, now, best] = [player, learned.player, tour].map(
        (one) => puttingValues(one).shares(metres)[count],
      ) as [number, number, number]
      const [low, high] = bandOf(metres)
      return { metres, before, now, low, high, tour: best }
    })
  const putts = stations.filter(({ station, balls }) => station.kind === 'putt' && balls > 0)
  return {
    onePutt: {
      points: putting(0, learned.onePuttBand),
      played: putts.map(({ station, holed, balls }) => ({
        metres: station.metres,
        value: holed / balls,
        balls,
      })),
    },
    threePutts: { points: putting(2, learned.threePuttBand), played: [] },
    short: SHORT_LIES.map((lie) => ({
      lie,
      strokes: {
        points: distances(...SHORT_CURVE_METRES).map((metres) => {
          const from = (strokesLost: number): number =>
            shortGameValue(
              { ...learned.player, shortGame: { ...player.shortGame, strokesLost } },
              lie,
              metres,
            )
          const { before, after, ninety } = learned.strokesLost
          return {
            metres,
            before: from(before),
            now: from(after),
            low: from(ninety[0]),
            high: from(ninety[1]),
            tour: from(0),
          }
        }),
        played: stations
          .filter(({ station, balls }) => station.kind === 'short' && station.lie === lie && balls > 0)
          .map((result) => {
            const costs = costsOf(learned.player, result)
            const value = costs.reduce((sum, cost) => sum + cost, 0) / costs.length
            return { metres: result.station.metres, value, balls: costs.length }
          }),
      },
    })),
  }
}

const SHORT_LIES = ['fairway', 'rough', 'bunker'] as const

function distances(from: number, to: number): number[] {
  return Array.from({ length: STEPS + 1 }, (_, step) => from + ((to - from) * step) / STEPS)
}
