// Prints how the plan of two holes of the example course moves with finer cells and more strikes, as it stands in
// docs/method.md, section 10: `npm run refinement`. Takes a few minutes.
import { readFileSync } from 'node:fs'
import { assembleCourse } from '../src/golf/course/assemble-course.ts'
import { REFERENCE_DAY } from '../src/golf/course/day.ts'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { completePlayer } from '../src/golf/player/complete-player.ts'
import { parsePlayer } from '../src/golf/player/parse-player.ts'
import { planHole } from '../src/golf/strategy/plan-hole.ts'
import { readSource } from '../src/outside/formats/read-source.ts'

/** Cells in metres, each with the strikes of the solve; 64 is what plans are made with, without weighing them again. */
const STEPS = [
  { cell: 6, times: 1 },
  { cell: 4, times: 1 },
  { cell: 3, times: 1 },
  { cell: 2, times: 1 },
  { cell: 1.5, times: 1 },
  { cell: 3, times: 2 },
  { cell: 3, times: 4 },
] as const
const HOLES = ['3', '7']

const read = (name: string): Buffer => readFileSync(new URL(`../examples/${name}`, import.meta.url))
const course = assembleCourse(
  readSource(read('sandrel-ness.course.geojson'), 'sandrel-ness.course.geojson').features,
  {},
).course
const player = completePlayer(parsePlayer(read('aldous-brack.player.json').toString(), 'player'))

console.log(`| cell, strikes | ${HOLES.map((ref) => `hole ${ref}: first club | second club`).join(' | ')} |`)
console.log(`|---|${HOLES.map(() => '---|---|').join('')}`)
for (const { cell, times } of STEPS) {
  const figures = HOLES.flatMap((ref) => {
    const plan = planHole({
      courseName: 'example',
      hole: holeFromCourse(course, ref, {}),
      player,
      day: REFERENCE_DAY,
      draws: 0,
      flips: false,
      cellMetres: cell,
      quadrature: { good: 48 * times, mishit: 16 * times },
    })
    return plan.options.slice(0, 2).map((option) => option.strokes.toFixed(3))
  })
  console.log(`| ${cell} m, ${64 * times} | ${figures.join(' | ')} |`)
}
