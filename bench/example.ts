import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { assembleCourse } from '../src/golf/course/assemble-course.ts'
import type { Day } from '../src/golf/course/day.ts'
import type { Hole } from '../src/golf/course/hole.ts'
import { holeFromCourse } from '../src/golf/course/hole-from-course.ts'
import { parseDay } from '../src/golf/course/parse-day.ts'
import { completePlayer } from '../src/golf/player/complete-player.ts'
import { parsePlayer } from '../src/golf/player/parse-player.ts'
import type { Player } from '../src/golf/player/player.ts'
import { readSource } from '../src/outside/formats/read-source.ts'

const read = (name: string): Buffer =>
  readFileSync(fileURLToPath(new URL(`../examples/${name}`, import.meta.url)))
const source = readSource(read('sandrel-ness.course.geojson'), 'sandrel-ness.course.geojson')
const { course } = assembleCourse(source.features, {})

/** A day with a west wind. */
export const windyDay: Day = parseDay(read('westerly.day.json').toString(), 'day')

/** A hole of the example course, its pin where the windy day has it. */
export function exampleHole(ref: string): Hole {
  return holeFromCourse(course, ref, { day: windyDay })
}

/** A player with these clubs and no others: the first carries 212 m, each one after it 12 m less. */
export function playerWith(clubs: readonly string[]): Player {
  const { length } = clubs
  const player = completePlayer(
    parsePlayer(
      JSON.stringify({
        schema: 'player/1',
        name: 'Bench',
        hand: 'right',
        handicapIndex: 12,
        sex: 'male',
        bag: 'as-listed',
        clubs: clubs.map((name, index) => ({ name, carry_m: 212 - 12 * index })),
      }),
      'bench',
    ),
  )
  if (player.clubs.length !== length)
    throw new Error(`the bag has ${player.clubs.length} clubs, not ${length}`)
  return player
}
