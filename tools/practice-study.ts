// `npm run practice-study [-- --rounds 20000 --seed 7 --golfers all]`: invented golfers are told what to practise, then play a short
// course by an independent simulation as they are and with each part better by as much; prints how often the advised part
// saves most, as in docs/recap.md.
import { parseArgs } from 'node:util'
import { PRACTICE_RATES } from '../src/golf/round/settings.ts'
import { practiceSummary, practiceTable } from './practice-study/practice-table.ts'
import { EQUAL_RATES, practiceTrials, studyGrounds } from './practice-study/practice-trials.ts'
import { studyHoles } from './practice-study/study-course.ts'
import { studyGolfers } from './practice-study/study-golfers.ts'

const { values } = parseArgs({
  options: {
    rounds: { type: 'string', default: '20000' },
    seed: { type: 'string', default: '7' },
    hours: { type: 'string', default: '10' },
    golfers: { type: 'string', default: 'all' },
  },
})
const all = studyGolfers()
const golfers =
  values.golfers === 'all' ? all : values.golfers.split(',').flatMap((number) => all[Number(number)] ?? [])
const grounds = studyGrounds(studyHoles())
const counts = {
  rounds: Number(values.rounds),
  seed: Number(values.seed),
  hours: Number(values.hours),
  rates: { ours: PRACTICE_RATES, equal: EQUAL_RATES },
}
const trials = golfers.flatMap((golfer) => {
  const found = practiceTrials(grounds, golfer, counts)
  console.error(practiceTable(found).slice(2).join('\n'))
  return found
})
console.log(practiceTable(trials).join('\n'))
console.log(practiceSummary(trials))
console.log(
  `Each hole ${counts.rounds} times, ${counts.hours} hours, seed ${counts.seed}; figures are strokes for 18 holes.`,
)
