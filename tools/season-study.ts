// `npm run season-study [-- --seasons 17 --holes all --golfers 0,4]`: simulated golfers, all or those of these numbers, play seasons
// of twenty rounds on the example course; prints how often a season names what is wrong with them, as in docs/recap.md.
import { parseArgs } from 'node:util'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { exampleCourse, exampleDay, examplePlayer } from './season-study/examples.ts'
import { GOLFERS } from './season-study/golfers.ts'
import { type GolferSeasons, playSeasons, SEASON_TABLE_HEAD, seasonRow } from './season-study/season-table.ts'
import { studyHole } from './season-study/study-hole.ts'

const { values } = parseArgs({
  options: {
    seasons: { type: 'string', default: '17' },
    rounds: { type: 'string', default: '20' },
    holes: { type: 'string', default: 'all' },
    golfers: { type: 'string', default: '' },
    seed: { type: 'string', default: '9' },
  },
})
const course = await exampleCourse()
const day = exampleDay('westerly')
const player = examplePlayer('tobin-skell')
const refs = values.holes === 'all' ? course.holes.map(({ ref }) => ref) : values.holes.split(',')
const holes = refs.map((ref) => studyHole(holeFromCourse(course, ref, { day }), player, day))
const { seasons, rounds, seed } = values
console.log(SEASON_TABLE_HEAD.join('\n'))
const results: GolferSeasons[] = []
const golfers =
  values.golfers === ''
    ? GOLFERS
    : values.golfers.split(',').flatMap((number) => GOLFERS[Number(number)] ?? [])
const counts = { seasons: Number(seasons), rounds: Number(rounds), seed: Number(seed) }
// A golfer takes minutes: each is told when done.
for (const result of playSeasons(holes, counts, golfers)) {
  console.log(seasonRow(result))
  results.push(result)
}
const worst = Math.max(...results.map(({ worstSum }) => worstSum))
const least = Math.min(...results.map(({ leastDecision }) => leastDecision))
console.log(
  `Largest |adds up| ${worst.toExponential(1)}; least cost of a choice ${least}; most that choices cost a round of who follows the plan ${results.find(({ golfer }) => golfer === GOLFERS[0])?.mostDecision ?? 'not played'}.`,
)
