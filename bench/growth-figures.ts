import type { Hole } from '../src/golf/course/hole.ts'
import type { Player } from '../src/golf/player/player.ts'
import { holeGround, holeModel } from '../src/golf/strategy/hole-model.ts'
import { holeProblem } from '../src/golf/strategy/hole-problem.ts'
import { CELL_METRES, SOLVE_TOLERANCE } from '../src/golf/strategy/settings.ts'
import { solveShortestPath } from '../src/numbers/solver/solve-shortest-path.ts'
import { exampleHole, playerWith, windyDay } from './example.ts'
import { type Figure, middleOf } from './measure.ts'

/** Twelve clubs; every second of them makes half a bag, with half of the wedges, whose partial swings are shots too. */
const CLUBS = [
  ...['driver', '3-wood', '5-wood', '4-hybrid', '5-iron', '6-iron', '7-iron', '8-iron'],
  ...['pitching-wedge', '50-wedge', '54-wedge', '58-wedge'],
]
const ROUNDS = 3
/** Par 4 and par 5 with a bend and few trees: what differs is the length. */
const [PAR_4, PAR_5] = ['1', '2']

/** One solve to be timed, and how many states it has. */
interface Solve {
  readonly name: string
  readonly states: number
  readonly milliseconds: () => number
}

/**
 * How the cost of a solve grows with states, clubs and length. Each ratio is the middle one of a few rounds, in which all
 * are solved after each other, so that a busy spell of the machine falls on both sides of a ratio.
 */
export function growthFigures(): Figure[] {
  const [all, half] = [playerWith(CLUBS), playerWith(CLUBS.filter((_, index) => index % 2 === 0))]
  const hole = exampleHole('7')
  const coarse = solveOf(`solve, cells of ${2 * CELL_METRES} m`, hole, all, 2 * CELL_METRES)
  const plain = solveOf(`solve, cells of ${CELL_METRES} m`, hole, all)
  const fewClubs = solveOf(`solve, ${half.clubs.length} clubs`, hole, half)
  const manyClubs = { ...plain, name: `solve, ${all.clubs.length} clubs` }
  const par4 = solveOf('solve of a par 4, 1000 states', exampleHole(PAR_4), all)
  const par5 = solveOf('solve of a par 5, 1000 states', exampleHole(PAR_5), all)
  const times = new Map<Solve, number[]>()
  for (let round = 0; round < ROUNDS; round++)
    for (const solve of [coarse, plain, fewClubs, par4, par5])
      times.set(solve, [...(times.get(solve) ?? []), solve.milliseconds()])
  times.set(manyClubs, times.get(plain) as number[])
  const grown = (from: Solve, to: Solve, isByState = false): Figure[] => {
    console.error(`${from.name}: ${from.states} states; ${to.name}: ${to.states}`)
    const costs = (solve: Solve): number[] =>
      (times.get(solve) as number[]).map((time) => (isByState ? (1000 * time) / solve.states : time))
    const [before, after] = [costs(from), costs(to)]
    const ratio = middleOf(after.map((time, round) => time / (before[round] as number)))
    return [
      { name: from.name, unit: 'ms', median: middleOf(before), ratio: null, against: null },
      { name: to.name, unit: 'ms', median: middleOf(after), ratio, against: from.name },
    ]
  }
  return [...grown(coarse, plain), ...grown(fewClubs, manyClubs), ...grown(par4, par5, true)]
}

function solveOf(name: string, hole: Hole, player: Player, cellMetres: number = CELL_METRES): Solve {
  const model = () => holeModel(holeGround(hole, cellMetres), player, windyDay)
  return {
    name,
    states: model().states.order.length,
    milliseconds: () => {
      const fresh = model()
      const start = performance.now()
      const { converged } = solveShortestPath(holeProblem(fresh), { tolerance: SOLVE_TOLERANCE })
      if (!converged) throw new Error('the hole was not solved')
      return performance.now() - start
    },
  }
}
