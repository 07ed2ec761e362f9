import { explicitProblem } from '../../src/numbers/solver/explicit-problem.ts'
import { solveShortestPath } from '../../src/numbers/solver/solve-shortest-path.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'

const EXAMPLE = 'Broadie, worked example of 2014: a hole of 350 yd, ends from Interfaces 42 (2012), table 9'

/** The published choice of one step, and the closed form of a hole played with one club. */
export function solverRows(): PublishedRow[] {
  const step = [
    ['longer club to 100 yd, fairway 50 %', 100, 0.5, 2.91],
    ['shorter club to 120 yd, fairway 65 %', 120, 0.65, 2.9305],
  ] as const
  const oneStep = step.map(([what, yards, chance, published]) => ({
    what,
    unit: 'strokes',
    published,
    source: EXAMPLE,
    status: 'VERIFIED (b)',
    ours: oneStepValue(yards, chance),
    decimals: 4,
    bound: 0,
  }))
  const closed = [0.9, 0.5, 0.25, 0.1].map((chance) => ({
    what: `one club that holes out with chance ${chance}: 1/p strokes`,
    unit: 'strokes',
    published: 1 / chance,
    source: 'geometric distribution',
    status: 'DERIVED',
    ours: solvedValue([[{ cost: 1, next: [{ state: 0, chance: 1 - chance }] }]]),
    decimals: 9,
    bound: 0,
  }))
  return [...oneStep, ...closed]
}

function oneStepValue(yards: number, fairwayChance: number): number {
  const ends = referenceRows('tour_expected_strokes_paper.csv').find(
    (row) => Number(row.distance_yd) === yards,
  )
  return solvedValue([
    [
      {
        cost: 0,
        next: [
          { state: 1, chance: fairwayChance },
          { state: 2, chance: 1 - fairwayChance },
        ],
      },
    ],
    [{ cost: Number(ends?.fairway_strokes), next: [] }],
    [{ cost: Number(ends?.rough_strokes), next: [] }],
  ])
}

function solvedValue(actions: Parameters<typeof explicitProblem>[0]): number {
  return solveShortestPath(explicitProblem(actions)).values[0] ?? Number.NaN
}
