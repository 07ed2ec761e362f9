// `npm run near-green-learning-study [-- --players 80 --played 180]`: simulated golfers chip and putt on greens of the example
// course and are learned from their logs; prints how often the truth lies in what was learned, as in docs/recap.md.
import { parseArgs } from 'node:util'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { NEAR_NUMBERS, nearGreenTrials } from './near-green-learning/near-green-trials.ts'
import { studyPlayers } from './pattern-calibration/study-players.ts'
import { exampleCourse, exampleDay } from './season-study/examples.ts'

const { values } = parseArgs({
  options: {
    players: { type: 'string', default: '80' },
    played: { type: 'string', default: '180' },
    holes: { type: 'string', default: '3,7,12,16' },
    logging: { type: 'string', default: 'counted' },
    seed: { type: 'string', default: '1200' },
  },
})
const course = await exampleCourse()
const day = exampleDay('westerly')
const trials = nearGreenTrials(
  {
    holes: values.holes.split(',').map((ref) => holeFromCourse(course, ref, { day })),
    day,
    guesses: studyPlayers(),
    players: Number(values.players),
    played: Number(values.played),
    logging: values.logging === 'each' ? 'each' : 'counted',
    seed: Number(values.seed),
  },
  (done) => process.stderr.write(`${done} of ${values.players} players\n`),
)
const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length
console.log(
  `${values.players} players, in the mean putts from ${mean(trials.map(({ putts }) => putts)).toFixed(0)} places and ${mean(trials.map(({ strokes }) => strokes)).toFixed(0)} strokes near the green each, ${mean(trials.map(({ unused }) => unused)).toFixed(0)} not learned from.`,
)
console.log(
  '| number | in the 90 % interval, % | error, mean | standard error | error before, root mean square | now | width of the interval, share of before |',
)
console.log('|---|---|---|---|---|---|---|')
for (const number of NEAR_NUMBERS) {
  const own = trials.filter((trial) => trial.number === number)
  // Spreads in per cent of the truth, strokes lost in hundredths of a stroke.
  const errorOf = (guess: number, truth: number): number =>
    number === 'strokesLost' ? 100 * (guess - truth) : 100 * Math.log(guess / truth)
  const errors = own.map(({ after, truth }) => errorOf(after, truth))
  const before = own.map((trial) => errorOf(trial.before, trial.truth))
  const spread = (all: readonly number[]): number => Math.sqrt(mean(all.map((one) => one ** 2)))
  const cells = [
    number,
    (100 * mean(own.map(({ isInNinety }) => Number(isInNinety)))).toFixed(0),
    mean(errors).toFixed(1),
    (spread(errors) / Math.sqrt(own.length)).toFixed(1),
    spread(before).toFixed(1),
    spread(errors).toFixed(1),
    mean(own.map(({ width }) => width)).toFixed(2),
  ]
  console.log(`| ${cells.join(' | ')} |`)
}
