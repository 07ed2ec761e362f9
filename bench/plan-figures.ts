import { type Flights, flights } from '../src/golf/ball/flights.ts'
import { greenSlowing } from '../src/golf/ball/green-slowing.ts'
import { greenSurface } from '../src/golf/course/green-surface.ts'
import { greenPutting, greenRolls } from '../src/golf/player/green-putting.ts'
import { holeConditions } from '../src/golf/strategy/hole-conditions.ts'
import { holeGround, holeModel } from '../src/golf/strategy/hole-model.ts'
import { holeProblem } from '../src/golf/strategy/hole-problem.ts'
import { type RestTable, restAt } from '../src/golf/strategy/rest-table.ts'
import { restTables } from '../src/golf/strategy/rest-tables.ts'
import { RUN_HEADING_STEP_DEGREES, SOLVE_TOLERANCE } from '../src/golf/strategy/settings.ts'
import { isLow, shotsOf } from '../src/golf/strategy/shots.ts'
import { solveShortestPath } from '../src/numbers/solver/solve-shortest-path.ts'
import { windyDay as day, exampleHole, playerWith } from './example.ts'
import { growthFigures } from './growth-figures.ts'
import { type Figure, medianMilliseconds, type Timed } from './measure.ts'
import { nearbyFigures } from './nearby-figures.ts'
import { solverFigures } from './solver-figures.ts'

const RUNS = 5
const SOLVES = 3
const FLIGHT_HEADINGS = 36
const RUN_METRES = 15
/** A small green, a large one, and one so large that it is rare: nodes grow with the logarithm of the reach. */
const GREEN_REACHES = [8, 20, 40]

/** What a plan is made of, on hole 7 of the example course in a west wind, as shares of the first solve in the same run. */
export function planFigures(): readonly Figure[] {
  const hole = exampleHole('7')
  /** A bag of fourteen: the putter is one of them and needs no flight. */
  const player = playerWith([
    ...['driver', '3-wood', '5-wood', '4-hybrid', '5-iron', '6-iron', '7-iron', '8-iron', '9-iron'],
    ...['pitching-wedge', '50-wedge', '54-wedge', '58-wedge'],
  ])

  let flown = 0
  /** Lofts a hair apart, since launches once found are kept: every run finds its own, as the first plan of a day does. */
  function flyBag(made: Flights): void {
    flown += 1
    for (const shot of shotsOf(player))
      for (let heading = 0; heading < FLIGHT_HEADINGS; heading++)
        made.changeFor(
          shot.loftDegrees + flown * 1e-6,
          shot.stock.carryMetres,
          (2 * Math.PI * heading) / FLIGHT_HEADINGS,
          0,
          isLow(shot),
        )
  }

  const solve: Timed<null> = {
    name: 'first solve',
    prepare: () => null,
    run: () => {
      const problem = holeProblem(holeModel(holeGround(hole), player, day))
      const { converged } = solveShortestPath(problem, { tolerance: SOLVE_TOLERANCE })
      if (!converged) throw new Error('the hole was not solved')
    },
  }
  const flightTables: Timed<Flights> = {
    name: 'flight tables, bag of 14, all headings',
    prepare: () => flights(holeConditions(hole, day)),
    run: flyBag,
  }
  /** Rolls and putting on the hole's green, out to so many metres from the hole. */
  const greenTables = (reachMetres: number): Timed<null> => {
    const question = {
      slopes: greenSurface(hole),
      hole: hole.pin,
      slowing: greenSlowing(day.greenSpeedFeet),
      reachMetres,
    }
    const { nodes } = greenPutting(player, greenRolls(question))
    return {
      name: `green tables, ${nodes} nodes to ${reachMetres} m`,
      prepare: () => null,
      run: () => {
        greenPutting(player, greenRolls(question))
      },
    }
  }
  const ground = holeGround(hole)
  const model = holeModel(ground, player, day)
  /** A table is worked out as it is read. */
  function readAll(table: RestTable, size: number): void {
    for (let index = 0; index < size; index++) restAt(ground.places, table, index)
  }
  const restOfOneRun: Timed<ReturnType<typeof restTables>> = {
    name: `rest tables, one run of ${RUN_METRES} m, all headings`,
    prepare: () => restTables(ground.places, greenSurface(hole)),
    run: (rest) => {
      for (let degrees = 0; degrees < 360; degrees += RUN_HEADING_STEP_DEGREES)
        readAll(rest.tablesFor(RUN_METRES)((degrees * Math.PI) / 180), ground.places.count)
    },
  }
  const greenTablesOfOneLanding: Timed<ReturnType<typeof restTables>> = {
    name: 'green tables, one landing, all headings',
    prepare: () => restTables(ground.places, greenSurface(hole)),
    run: (rest) => {
      for (let degrees = 0; degrees < 360; degrees += RUN_HEADING_STEP_DEGREES)
        readAll(
          rest.greenTablesFor({ falling: 4, level: 2, rising: -1 })((degrees * Math.PI) / 180),
          ground.places.greenPlaces.length,
        )
    },
  }
  const started = (): { problem: ReturnType<typeof holeProblem>; values: Float64Array } => {
    const problem = holeProblem(model)
    return { problem, values: problem.startValues() }
  }
  const improveSweep: Timed<ReturnType<typeof started>> = {
    name: 'one improve sweep, tables laid in it',
    prepare: started,
    run: ({ problem, values }) => {
      problem.improve(values)
    },
  }
  const settleSweep: Timed<ReturnType<typeof started>> = {
    name: 'one settle sweep',
    prepare: () => {
      const made = started()
      made.problem.improve(made.values)
      return made
    },
    run: ({ problem, values }) => {
      problem.settle(values)
    },
  }

  const against = medianMilliseconds(solve, SOLVES)
  const share = <T>(timed: Timed<T>, runs: number): Figure => {
    const median = medianMilliseconds(timed, runs)
    return { name: timed.name, unit: 'ms', median, ratio: median / against, against: solve.name }
  }
  return [
    { name: solve.name, unit: 'ms', median: against, ratio: null, against: null },
    share(flightTables, RUNS),
    ...GREEN_REACHES.map((reach) => share(greenTables(reach), RUNS)),
    share(restOfOneRun, RUNS),
    share(greenTablesOfOneLanding, RUNS),
    share(improveSweep, SOLVES),
    share(settleSweep, SOLVES),
    ...solverFigures(model),
    ...growthFigures(),
    ...nearbyFigures({ courseName: 'Bench', hole, player, day }),
  ]
}
