import { checkDay } from '#golf/course/check-day.ts'
import type { Course } from '#golf/course/course.ts'
import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { requirePins } from '#golf/course/parse-pins.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { plainText } from './plain-text.ts'
import { faultLines } from './print-faults.ts'
import { readText } from './read-file.ts'

/**
 * The day in a file, or the reference day without one; hole locations of a typed pin sheet go over its own. What it says of holes that the course does not have is told on
 * standard error, unless the answer is for a program or nothing but it is wanted.
 */
export function loadDay(
  path: string | undefined,
  course: Course,
  options: GlobalOptions,
  machine: Machine,
  pinsPath?: string,
): Day {
  const own = path === undefined ? REFERENCE_DAY : parseDay(readText(path), path)
  const day =
    pinsPath === undefined
      ? own
      : { ...own, pins: { ...own.pins, ...requirePins(readText(pinsPath), pinsPath) } }
  const faults = checkDay(day, course)
  if (faults.length > 0 && !options.quiet && !options.json)
    machine.err(`${plainText(faultLines(faults, machine).join('\n'), machine.hasColour)}\n`)
  return day
}
