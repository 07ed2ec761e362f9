import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import { beforeAll, describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import type { Lie, Player } from '#golf/player/player.ts'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { yardsToMetres } from '#numbers/units/units.ts'
import { evaluateStroke } from './evaluate-stroke.ts'
import { type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { area, box, CALM_DAY, disc, inventedHole } from './invented-hole.fixture.ts'
import { COMPARE_QUADRATURE, OVERCLUB_METRES } from './settings.ts'
import { type Shot, shotsOf } from './shots.ts'
import { strokeLines } from './stroke-lines.ts'

// Whole holes against published expected strokes. The published numbers average over every hole that was played, with
// all its trouble; the hole here is plain, with a usual green and fairway: near the green, where the trouble is much the same, the model must agree, and from
// far it must be better.

const LENGTH = 480
const hole: Hole = plainHole()

/** Straight, fairway 30 m wide, a round green of 560 m² with sand at both sides and first cut about. */
function plainHole(): Hole {
  const straight = inventedHole(LENGTH, [
    area('first-cut', box(-18, 18, -30, LENGTH - 12)),
    area('fairway', box(-15, 15, -30, LENGTH - 12)),
    area('bunker', box(-24, -15, LENGTH - 14, LENGTH + 4)),
    area('bunker', box(15, 24, LENGTH - 8, LENGTH + 10)),
  ])
  const green = disc(straight.pin, 13.3)
  return {
    ...straight,
    green,
    areas: [...straight.areas.filter(({ ground }) => ground !== 'green'), area('green', green, 'green')],
  }
}

interface Solved {
  readonly model: HoleModel
  readonly values: Float64Array
  readonly shots: readonly Shot[]
}

function solved(handicapIndex: number): Solved {
  const player: Player = completePlayer({
    name: 'test',
    hand: 'right',
    sex: 'male',
    handicapIndex,
    clubs: [],
    shortGame: {},
    putting: {},
  })
  const model = holeModel(holeGround(hole, 8), player, CALM_DAY)
  const problem = holeProblem(model, { quadrature: { good: 48, mishit: 16 } })
  const { values, converged } = solveShortestPath(problem, { tolerance: 1e-5 })
  expect(converged).toBe(true)
  return { model, values, shots: shotsOf(player) }
}

function strokesFrom({ model, values, shots }: Solved, lie: Lie, yards: number): number {
  const y = LENGTH - yardsToMetres(yards)
  const headings = strokeLines(model, 0, y, 2).filter((line) => Math.abs(line) < 0.3)
  return evaluateStroke(model, values, {
    situation: { x: 0, y, lie },
    quadrature: COMPARE_QUADRATURE,
    tries: shots
      .filter((shot) => shot.stock.totalMetres < LENGTH - y + OVERCLUB_METRES)
      .map((shot) => ({ shot, headings })),
  }).value
}

const rows = Papa.parse<Record<string, string>>(
  readFileSync(
    new URL('../../../test/fixtures/reference/tour_expected_strokes_paper.csv', import.meta.url),
    'utf8',
  ),
  { header: true, skipEmptyLines: true },
).data
const published = (lie: string, yards: number): number =>
  Number(rows.find((row) => Number(row.distance_yd) === yards)?.[`${lie}_strokes`])

// Broadie, "Assessing golfer performance on the PGA TOUR", Interfaces 42 (2), 2012, Table 9.
describe('a tour player (handicap index −5) on a plain hole', () => {
  let tour: Solved
  beforeAll(() => {
    tour = solved(-5)
  })

  it.each([100, 120, 140, 160, 180, 200])(
    'takes from %i yd of fairway and of rough what the table says, within 0.1',
    (yards) => {
      for (const lie of ['fairway', 'rough'] as const)
        expect(Math.abs(strokesFrom(tour, lie, yards) - published(lie, yards)), lie).toBeLessThan(0.1)
    },
  )

  // The table dips from 120 to 140 yd on the tee and its short tees lie beside water and sand; the plain hole has none.
  it.each([100, 120, 140, 160, 180, 200])(
    'takes from a tee of %i yd what the table says, within 0.15',
    (yards) => {
      expect(Math.abs(strokesFrom(tour, 'tee', yards) - published('tee', yards))).toBeLessThan(0.15)
    },
  )

  it('is better than the table from 300 yd on, where trouble is left out, but by less than 0.35', () => {
    for (const yards of [300, 400, 500])
      for (const lie of ['tee', 'fairway', 'rough'] as const) {
        const gap = strokesFrom(tour, lie, yards) - published(lie, yards)
        expect(gap, `${lie} ${yards} yd`).toBeLessThan(0)
        expect(gap, `${lie} ${yards} yd`).toBeGreaterThan(-0.35)
      }
  })
})

// Broadie 2008, the line of a golfer averaging 90, quoted in Broadie 2012: J = 2.79 + 0.0066 strokes a yard. An average of
// 90 is taken as an index of 16: the score lies about three strokes over rating plus index (World Handicap System).
describe('a golfer averaging 90 (handicap index 16) on a plain hole', () => {
  const line = (yards: number): number => 2.79 + 0.0066 * yards
  let golfer: Solved
  beforeAll(() => {
    golfer = solved(16)
  })

  it('takes what the line says from 100 yd, within 0.1', () => {
    expect(Math.abs(strokesFrom(golfer, 'tee', 100) - line(100))).toBeLessThan(0.1)
  })

  it('is better than the line from longer tees, where trouble is left out, by no more than a stroke in nine', () => {
    for (const yards of [200, 300, 400, 500]) {
      const share = strokesFrom(golfer, 'tee', yards) / line(yards)
      expect(share, `${yards} yd`).toBeLessThan(1)
      expect(share, `${yards} yd`).toBeGreaterThan(1 - 1 / 9)
    }
  })
})
