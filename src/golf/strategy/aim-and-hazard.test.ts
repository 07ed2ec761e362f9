import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { explicitProblem } from '#numbers/solver/explicit-problem.ts'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { normalCdf } from '#numbers/statistics/normal.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { planHole } from './plan-hole.ts'

// Aim moves away from a hazard on one side as the spread grows, and never towards it past the middle.

// The exact small problem: a miss of x costs ½ k x², and beyond the edge at D to the right a penalty c; the cost of
// aiming at a is ½ k (a² + σ²) + c (1 − Φ((D − a)/σ)), and the best a solves k a = −(c/σ) φ((D − a)/σ). The 48 rows were
// derived from that condition apart from this project's code.
describe('the best aim beside one hazard, against 48 derived cases', () => {
  const rows = Papa.parse<Record<string, string>>(
    readFileSync(
      new URL('../../../test/fixtures/reference/aim_shift_one_sided_hazard_derived.csv', import.meta.url),
      'utf8',
    ),
    { header: true, skipEmptyLines: true },
  ).data.map((row) => Object.values(row).slice(1).map(Number))

  it('has them all', () => expect(rows).toHaveLength(48))

  it.each(rows)(
    'k %d, penalty %d, edge at %d yd, spread %d yd: aim %d yd, cost %d',
    (k, penalty, edge, sd, aim, cost, costAtMiddle) => {
      const aims = Array.from({ length: 6001 }, (_, index) => -40 + index / 100)
      const costOf = (at: number): number =>
        0.5 * k! * (at * at + sd! * sd!) + penalty! * (1 - normalCdf((edge! - at) / sd!))
      const problem = explicitProblem([aims.map((at) => ({ cost: costOf(at), next: [] }))])
      const solution = solveShortestPath(problem)
      const best = aims[problem.policy[0] as number] as number
      // The table is rounded to 0.01 yd and 0.0001 strokes, the aims tried lie 0.01 yd apart.
      expect(Math.abs(best - aim!)).toBeLessThan(0.0101)
      expect(Math.abs((solution.values[0] as number) - cost!)).toBeLessThan(0.000051)
      expect(Math.abs(costOf(0) - costAtMiddle!)).toBeLessThan(0.000051)
      expect(best).toBeLessThanOrEqual(0)
    },
  )
})

// Broadie, Every Shot Counts, 2014: the smaller the pattern, the closer the target may lie to trouble.
describe('the planned line of a drive', () => {
  const length = 330
  const open = inventedHole(length, [area('fairway', box(-19, 19, 60, length - 16))])
  const water: Hole = {
    ...open,
    areas: [area('penalty-red', box(19, 120, 60, length - 60)), ...open.areas],
  }
  const SPREADS = [3, 5, 7, 9]

  it('turns away from water on the right, further as the spread grows, and costs more', () => {
    const lines = SPREADS.map((spread) => driveOf(water, spread))
    expect(lines[0]?.heading).toBeLessThan(0)
    for (const [index, line] of lines.slice(1).entries()) {
      expect(line.heading).toBeLessThanOrEqual((lines[index]?.heading ?? 0) + 1e-9)
      expect(line.strokes).toBeGreaterThan(lines[index]?.strokes ?? 0)
    }
    expect(lines.at(-1)?.heading).toBeLessThan((lines[0]?.heading ?? 0) - 3)
  })

  // Found while this was written: a club that the wind makes short enough was held to the line at the pin.
  it('turns away from the water into a strong wind too, with a club that is too long without it', () => {
    const short = inventedHole(150, [
      area('fairway', box(-25, 12, 60, 135)),
      area('penalty-red', box(12, 90, 60, 170)),
    ])
    const intoTheWind = { ...CALM_DAY, wind: { speedMetresPerSecond: 10, fromDegrees: 0 } }
    expect(driveOf(short, 7, intoTheWind).heading).toBeLessThan(-1.5)
  })

  it('stays in the middle, within one step of the lines, when there is no water', () => {
    for (const spread of [3, 9])
      expect(Math.abs(driveOf(open, spread).heading)).toBeLessThanOrEqual(0.5 + 1e-9)
  })
})

function golfer(directionSdDegrees: number): Player {
  return inventedPlayer([
    { name: 'driver', carry_m: 190, total_m: 208, direction_sd_deg: directionSdDegrees, curve_share: 0 },
    { name: '8-iron', carry_m: 118, total_m: 123, direction_sd_deg: 5, curve_share: 0 },
  ])
}

/** Line of the driver from the markers, degrees to the right of the hole line, and what it costs. */
function driveOf(
  hole: Hole,
  directionSdDegrees: number,
  day: Day = CALM_DAY,
): { readonly heading: number; readonly strokes: number } {
  const plan = planHole({
    courseName: 'test',
    hole,
    player: golfer(directionSdDegrees),
    day,
    club: 'driver',
    draws: 0,
    flips: false,
    cellMetres: 8,
    quadrature: { good: 32, mishit: 8 },
  })
  const driver = plan.options.find((option) => option.club === 'driver')
  if (!driver) throw new Error('the plan has no driver')
  return { heading: driver.aim.heading_deg, strokes: driver.strokes }
}
