// Writes the invented example course and its tables: `npx tsx tools/draw-example-course.ts`.
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildCourse } from './example-course/build-course.ts'

/** Every file the drawing makes: path below `examples/`, and its text. The same bytes every time. */
export function exampleFiles(): ReadonlyMap<string, string> {
  return new Map([['sandrel-ness.course.geojson', buildCourse()]])
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, text] of exampleFiles()) {
    const path = fileURLToPath(new URL(`../examples/${name}`, import.meta.url))
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, text)
  }
}
