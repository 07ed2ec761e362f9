import { checkCourse } from '#golf/course/check-course.ts'
import { loadCourse } from './load-course.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf, faultCounts, faultLines } from './print-faults.ts'
import { parseUnits } from './units-of-the-reader.ts'

/** `marram check`: every fault of a course file with its place and advice. Returns the exit code. */
export async function checkCommand(path: string, options: GlobalOptions, machine: Machine): Promise<number> {
  // A check names no lengths, but a slip in the units is told here as by every other command.
  parseUnits(options.units)
  const { course, faults: found } = await loadCourse(path)
  const faults = [...found, ...checkCourse(course)]
  const holes = course.holes.length
  if (options.json) printJson({ schema: 'check/1', course: course.name, holes, faults }, machine)
  else
    printLines(
      [
        ...faultLines(options.quiet ? faults.filter((fault) => fault.severity === 'error') : faults, machine),
        `${course.name || path}: ${holes} hole${holes === 1 ? '' : 's'}, ${faultCounts(faults)}`,
      ],
      machine,
    )
  return exitCodeOf(faults)
}
