import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { assembleCourse } from '../../src/golf/course/assemble-course.ts'
import type { Course } from '../../src/golf/course/course.ts'
import type { Day } from '../../src/golf/course/day.ts'
import { parseDay } from '../../src/golf/course/parse-day.ts'
import { completePlayer } from '../../src/golf/player/complete-player.ts'
import { parsePlayer } from '../../src/golf/player/parse-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { readSource } from '../../src/outside/formats/read-source.ts'

const read = (name: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../../examples/${name}`, import.meta.url)))

/** The course of the examples. */
export async function exampleCourse(): Promise<Course> {
  const name = 'sandrel-ness.course.geojson'
  const { features } = await readSource(read(name), name)
  return assembleCourse(features, {}).course
}

/** A player of the examples, by the name of the file. */
export function examplePlayer(name: string): Player {
  return completePlayer(parsePlayer(read(`${name}.player.json`).toString(), name))
}

/** A day of the examples, by the name of the file. */
export function exampleDay(name: string): Day {
  return parseDay(read(`${name}.day.json`).toString(), name)
}
