// Writes the invented example course, its tables, and a season of shots: `npx tsx tools/draw-example-course.ts`.
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildCourse } from './example-course/build-course.ts'
import { buildShots } from './example-course/build-shots.ts'
import { buildShortTable, buildTable } from './example-course/build-table.ts'

/** Every file the drawing makes: path below `examples/`, and its text. The same bytes every time. */
export function exampleFiles(): ReadonlyMap<string, string> {
  const course = buildCourse()
  return new Map([
    ['sandrel-ness.course.geojson', course],
    ['tables/sandrel-ness.csv', buildTable(course)],
    ['tables/hole-7.csv', buildShortTable(course, '7')],
    ['wren.shots.csv', buildShots()],
  ])
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, text] of exampleFiles()) {
    const path = fileURLToPath(new URL(`../examples/${name}`, import.meta.url))
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, text)
  }
}
