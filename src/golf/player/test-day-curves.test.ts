import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { feetToMetres, yardsToMetres } from '#numbers/units/units.ts'
import { learnTestDay } from './learn-test-day.ts'
import { playerOfLevel } from './level.ts'
import { type TestedCurve, testDayCurves } from './test-day-curves.ts'
import type { StationResult } from './test-day-results.ts'
import { STATIONS } from './test-day-stations.ts'

const player = playerOfLevel('20')

/** A test that went like this: so large a share of every putt holed, short shots all left so far away. */
function played(holedShare: number, leaveMetres: number): readonly StationResult[] {
  return STATIONS.map((station) => {
    const holed = station.kind === 'putt' ? Math.round(station.balls * holedShare) : 0
    const leaves = station.kind === 'short' ? station.balls : 0
    return {
      station,
      holed,
      balls: station.balls,
      leaves: Array.from({ length: leaves }, () => ({ metres: leaveMetres, isOffGreen: false })),
    }
  })
}

function at({ points }: TestedCurve, metres: number): TestedCurve['points'][number] {
  return points.reduce((best, one) =>
    Math.abs(one.metres - metres) < Math.abs(best.metres - metres) ? one : best,
  )
}

const stations = played(0.4, 2)
const curves = testDayCurves(player, learnTestDay(player, { stations }), { stations })

describe('curves of a test day', () => {
  it('have a tour line that is the published one', () => {
    // Source: Broadie, one-putt shares as quoted in print (docs/published-values.md); the level is held to 2 in a hundred
    // there, and the curve's points lie up to 6 cm off the quoted distances, which is 2 more where it is steepest.
    const [head = '', ...rows] = readFileSync(
      new URL('../../../test/fixtures/reference/tour_putting.csv', import.meta.url),
      'utf8',
    )
      .trim()
      .split('\n')
    const columns = head.split(',')
    const shown = rows
      .map((row) => row.split(','))
      .map((cells) => ({
        feet: Number(cells[columns.indexOf('distance_ft')]),
        percent: cells[columns.indexOf('published_one_putt_pct')] ?? '',
      }))
      .filter(({ feet, percent }) => percent !== '' && feet <= 45)
    expect(shown.length).toBeGreaterThan(8)
    for (const { feet, percent } of shown)
      expect(
        Math.abs(100 * at(curves.onePutt, feetToMetres(feet)).tour - Number(percent)),
        `${feet} ft`,
      ).toBeLessThan(4)
    // Source: Broadie 2012, table 9, 20 and 40 yd.
    const published = { fairway: [2.4, 2.6], rough: [2.59, 2.78], bunker: [2.53, 2.82] } as const
    for (const { lie, strokes } of curves.short)
      for (const [place, yards] of [20, 40].entries())
        expect(at(strokes, yardsToMetres(yards)).tour).toBeCloseTo(
          published[lie as keyof typeof published][place] as number,
          1,
        )
  })

  it('lie inside their bands, putting falls with distance and strokes rise', () => {
    for (const curve of [curves.onePutt, curves.threePutts, ...curves.short.map(({ strokes }) => strokes)])
      for (const { now, low, high } of curve.points) {
        expect(low).toBeLessThanOrEqual(now + 1e-9)
        expect(high).toBeGreaterThanOrEqual(now - 1e-9)
      }
    const rises = (values: number[]): void => expect(values).toEqual(values.toSorted((a, b) => a - b))
    rises(curves.onePutt.points.map(({ now }) => -now))
    for (const { strokes } of curves.short) rises(strokes.points.map(({ now }) => now))
  })

  it('show what was played, station by station', () => {
    expect(curves.onePutt.played.map(({ metres, balls }) => [metres, balls])).toEqual([
      [1, 10],
      [2, 10],
      [4, 10],
      [8, 6],
      [14, 6],
    ])
    expect(curves.onePutt.played[1]?.value).toBe(0.4)
    const fairway = curves.short.find(({ lie }) => lie === 'fairway')
    expect(fairway?.strokes.played.map(({ metres }) => metres)).toEqual([15, 30])
    // A ball, and the putts expected from 2 m: the same from wherever it came.
    const values = curves.short.flatMap(({ strokes }) => strokes.played.map(({ value }) => value))
    for (const value of values) expect(value).toBeCloseTo(values[0] as number, 9)
    expect(values[0]).toBeGreaterThan(2)
  })

  it('better results never make a curve worse', () => {
    const better = played(0.7, 1)
    const good = testDayCurves(player, learnTestDay(player, { stations: better }), { stations: better })
    for (const metres of [1, 2, 4, 8])
      expect(at(good.onePutt, metres).now).toBeGreaterThan(at(curves.onePutt, metres).now)
    for (const [index, { strokes }] of good.short.entries())
      expect(at(strokes, 15).now).toBeLessThan(
        at((curves.short[index] as (typeof curves.short)[0]).strokes, 15).now,
      )
  })
})
