import { basename } from 'node:path'
import type { Fault } from '#faults/fault.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { Course } from '#golf/course/course.ts'
import type { ImportReport } from '#golf/course/import-report.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { readBytes } from './read-file.ts'

/** A course and everything that was noticed on the way from its file. */
export interface LoadedCourse {
  readonly course: Course
  readonly report: ImportReport
  readonly faults: readonly Fault[]
}

/**
 * Reads a course file, a typed hole table or any source that can be imported. Throws what reading the file throws;
 * what is wrong inside is in `faults`.
 */
export async function loadCourse(path: string): Promise<LoadedCourse> {
  const reading = await readSource(readBytes(path), basename(path))
  const { course, report, faults } = assembleCourse(reading.features, reading)
  return { course, report, faults: [...reading.faults, ...faults] }
}
