import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { encodeCourse } from '#golf/course/encode-course.ts'
import { importPage } from './import-page.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { outsideNames } from './outside-names.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { readSources } from './read-sources.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { writeText } from './write-file.ts'

/** The options of `marram import`. */
export interface ImportOptions extends GlobalOptions {
  readonly out: string
  readonly elevation?: string
}

/** `marram import`: sources → a course file and a report of what became of every element. Returns the exit code. */
export async function importCommand(
  paths: readonly string[],
  options: ImportOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  if (options.elevation !== undefined)
    throw new Failure('MAR-USAGE-003', 'Heights cannot be read from a grid yet.', '--elevation')
  const reading = await readSources(paths)
  const { course, report, faults: found } = assembleCourse(reading.features, reading)
  const faults: readonly Fault[] = [...reading.faults, ...found]
  writeText(options.out, encodeCourse(course))
  if (options.json)
    printJson({ schema: 'import/1', out: options.out, report: outsideNames(report), faults }, machine)
  else printLines(importPage(report, faults, options.out, units, options.quiet === true, machine), machine)
  return exitCodeOf(faults)
}
