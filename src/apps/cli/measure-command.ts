import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { loadCourse } from './load-course.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { measurePage } from './measure-page.ts'
import { outsideNames } from './outside-names.ts'
import { printJson, printLines } from './print-answer.ts'
import { parseUnits } from './units-of-the-reader.ts'

/** The options of `marram measure`. */
export interface MeasureOptions extends GlobalOptions {
  readonly hole: string
  readonly tee?: string
}

/** `marram measure`: a hole as the numbers a player writes down. Returns the exit code. */
export async function measureCommand(
  path: string,
  options: MeasureOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  const { course } = await loadCourse(path)
  const measures = measureHole(holeFromCourse(course, options.hole, { tee: options.tee }))
  if (options.json)
    printJson({ schema: 'measure/1', course: course.name, hole: outsideNames(measures) }, machine)
  else printLines(measurePage(measures, course.name, units), machine)
  return 0
}
