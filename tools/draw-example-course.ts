// Writes the invented example course and its tables: `npx tsx tools/draw-example-course.ts`.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { buildCourse } from './example-course/build-course.ts'

const examples = fileURLToPath(new URL('../examples/', import.meta.url))
writeFileSync(`${examples}sandrel-ness.course.geojson`, buildCourse())
