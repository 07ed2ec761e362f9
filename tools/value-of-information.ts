// Simulated players: strokes lost on holes of the example course by planning with a profile in place of the truth, by
// the shots it was learned from. Prints the table of docs/method.md, "Learning the player":
// `npm run value-of-information -- 60`.
import { readFileSync } from 'node:fs'
import { assembleCourse } from '../src/golf/course/assemble-course.ts'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { completePlayer } from '../src/golf/player/complete-player.ts'
import { readSource } from '../src/outside/formats/read-source.ts'
import { informationTable } from './value-of-information/information-table.ts'
import { informationTrials } from './value-of-information/information-trials.ts'

const players = Number(process.argv[2] ?? 60)
const file = 'sandrel-ness.course.geojson'
const source = readFileSync(new URL(`../examples/${file}`, import.meta.url))
const { course } = assembleCourse(readSource(source, file).features, {})
/** Six clubs keep the study to minutes. */
const guess = completePlayer({
  name: 'study',
  hand: 'right',
  sex: 'male',
  handicapIndex: 15,
  bag: 'as-listed',
  clubs: ['driver', '5-wood', '5-iron', '7-iron', '9-iron', 'sand-wedge'].map((name) => ({
    name,
    shots: 0,
    lies: {},
  })),
  shortGame: {},
  putting: {},
})
const trials = informationTrials(
  {
    holes: ['3', '7'].map((ref) => ({ ref, hole: holeFromCourse(course, ref, {}) })),
    guess,
    players,
    shots: [0, 10, 40, 160],
    cellMetres: 8,
    quadrature: { good: 48, mishit: 16 },
  },
  (done) => process.stderr.write(`${done} plans\n`),
)
process.stdout.write(`\n${informationTable(trials)}\n`)
