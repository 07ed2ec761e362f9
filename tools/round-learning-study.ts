// `npm run round-learning-study [-- --players 40 --rounds 10]`: simulated golfers play rounds on the example course and are learned
// from their logs; prints how often the truth lies in what was learned, as in docs/recap.md.
import { parseArgs } from 'node:util'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { studyPlayers } from './pattern-calibration/study-players.ts'
import { roundTable } from './round-learning/round-table.ts'
import { roundTrials } from './round-learning/round-trials.ts'
import { exampleCourse, exampleDay } from './season-study/examples.ts'

const { values } = parseArgs({
  options: {
    players: { type: 'string', default: '40' },
    rounds: { type: 'string', default: '10' },
    holes: { type: 'string', default: 'all' },
    logging: { type: 'string', default: 'places' },
    seed: { type: 'string', default: '700' },
  },
})
const course = await exampleCourse()
const day = exampleDay('westerly')
const refs = values.holes === 'all' ? course.holes.map(({ ref }) => ref) : values.holes.split(',')
const trials = roundTrials(
  {
    holes: refs.map((ref) => holeFromCourse(course, ref, { day })),
    day,
    guesses: studyPlayers(),
    players: Number(values.players),
    rounds: Number(values.rounds),
    logging: values.logging === 'letters' ? 'letters' : 'places',
    seed: Number(values.seed),
  },
  (done) => process.stderr.write(`${done} of ${values.players} players\n`),
)
console.log(roundTable(trials).join('\n'))
