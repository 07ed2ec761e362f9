// Times what a plan is made of, on hole 7 of the example course in a west wind, and prints shares of the first solve
// measured in the same run: they hold on any machine, the milliseconds do not. `npm run bench -- --json` prints records.
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { type Flights, flights } from '../src/golf/ball/flights.ts'
import { greenSlowing } from '../src/golf/ball/green-slowing.ts'
import { assembleCourse } from '../src/golf/course/assemble-course.ts'
import { greenSurface } from '../src/golf/course/green-surface.ts'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { parseDay } from '../src/golf/course/parse-day.ts'
import { completePlayer } from '../src/golf/player/complete-player.ts'
import { greenPutting, greenRolls } from '../src/golf/player/green-putting.ts'
import { parsePlayer } from '../src/golf/player/parse-player.ts'
import { holeConditions } from '../src/golf/strategy/hole-conditions.ts'
import { holeGround, holeModel } from '../src/golf/strategy/hole-model.ts'
import { holeProblem } from '../src/golf/strategy/hole-problem.ts'
import { restTables } from '../src/golf/strategy/rest-tables.ts'
import { RUN_HEADING_STEP_DEGREES, SOLVE_TOLERANCE } from '../src/golf/strategy/settings.ts'
import { isLow, shotsOf } from '../src/golf/strategy/shots.ts'
import { solveShortestPath } from '../src/numbers/solver/solve-shortest-path.ts'
import { readSource } from '../src/outside/formats/read-source.ts'
import { type Figure, medianMilliseconds, type Timed } from './measure.ts'
import { solverFigures } from './solver-figures.ts'

const RUNS = 5
const SOLVES = 3
/** A bag of fourteen: the putter is one of them and needs no flight. */
const CLUBS = 13
const FLIGHT_HEADINGS = 36
const RUN_METRES = 15
/** A small green, a large one, and one so large that it is rare: nodes grow with the logarithm of the reach. */
const GREEN_REACHES = [8, 20, 40]

const read = (name: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../examples/${name}`, import.meta.url)))
const source = readSource(read('sandrel-ness.course.geojson'), 'sandrel-ness.course.geojson')
const day = parseDay(read('westerly.day.json').toString(), 'day')
const hole = holeFromCourse(assembleCourse(source.features, {}).course, '7', { day })
const player = completePlayer(
  parsePlayer(
    JSON.stringify({
      schema: 'player/1',
      name: 'Bench',
      hand: 'right',
      handicapIndex: 12,
      sex: 'male',
      bag: 'as-listed',
      clubs: [
        ...['driver', '3-wood', '5-wood', '4-hybrid', '5-iron', '6-iron', '7-iron', '8-iron', '9-iron'],
        ...['pitching-wedge', '50-wedge', '54-wedge', '58-wedge'],
      ].map((name, index) => ({ name, carry_m: 212 - 12 * index })),
    }),
    'bench',
  ),
)
if (player.clubs.length !== CLUBS) throw new Error(`the bag has ${player.clubs.length} clubs, not ${CLUBS}`)

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
const restOfOneRun: Timed<ReturnType<typeof restTables>> = {
  name: `rest tables, one run of ${RUN_METRES} m, all headings`,
  prepare: () => restTables(ground.places, greenSurface(hole)),
  run: (rest) => {
    for (let degrees = 0; degrees < 360; degrees += RUN_HEADING_STEP_DEGREES)
      rest.tableFor(RUN_METRES, (degrees * Math.PI) / 180)
  },
}
const greenTablesOfOneLanding: Timed<ReturnType<typeof restTables>> = {
  name: 'green tables, one landing, all headings',
  prepare: () => restTables(ground.places, greenSurface(hole)),
  run: (rest) => {
    for (let degrees = 0; degrees < 360; degrees += RUN_HEADING_STEP_DEGREES)
      rest.greenTablesFor({ falling: 4, level: 2, rising: -1 })((degrees * Math.PI) / 180)
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
const figures: readonly Figure[] = [
  { name: solve.name, unit: 'ms', median: against, ratio: null, against: null },
  share(flightTables, RUNS),
  ...GREEN_REACHES.map((reach) => share(greenTables(reach), RUNS)),
  share(restOfOneRun, RUNS),
  share(greenTablesOfOneLanding, RUNS),
  share(improveSweep, SOLVES),
  share(settleSweep, SOLVES),
  ...solverFigures(model),
]

if (process.argv.includes('--json')) console.log(JSON.stringify(figures, null, 2))
else
  for (const { name, unit, median, ratio, against: of } of figures)
    console.log(
      `${name.padEnd(42)} ${median.toFixed(1).padStart(9)} ${unit}${ratio === null ? '' : `  ${ratio.toFixed(4)} of ${of}`}`,
    )
