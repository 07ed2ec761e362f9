import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { holeConditions } from '#golf/strategy/hole-conditions.ts'
import { playingLength } from '#golf/strategy/playing-length.ts'
import { loadCourse } from './load-course.ts'
import { loadDay } from './load-day.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { measurePage } from './measure-page.ts'
import { outsideNames } from './outside-names.ts'
import { printJson, printLines } from './print-answer.ts'
import { parseUnits } from './units-of-the-reader.ts'

/** The options of `marram measure`. */
export interface MeasureOptions extends GlobalOptions {
  readonly hole: string
  readonly tee?: string
  readonly day?: string
}

/** `marram measure`: a hole as the numbers a player writes down, with how long it plays on a day. Returns the exit code. */
export async function measureCommand(
  path: string,
  options: MeasureOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  const { course } = await loadCourse(path)
  const day = loadDay(options.day, course, options, machine)
  const hole = holeFromCourse(course, options.hole, { tee: options.tee, day })
  const measures = measureHole(hole)
  const plays = playingLength(hole, holeConditions(hole, day))
  if (options.json)
    printJson(
      {
        schema: 'measure/1',
        course: course.name,
        hole: outsideNames(measures),
        plays: outsideNames(plays),
      },
      machine,
    )
  else printLines(measurePage(measures, plays, course.name, units), machine)
  return 0
}
