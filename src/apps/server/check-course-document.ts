import { Failure } from '#faults/failure.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import { readSource } from '#outside/formats/read-source.ts'
import type { CheckedDocument } from './document-check.ts'

/**
 * Reads a document as a course file and collects every fault of reading, assembling and checking it. Throws the
 * Failure of the reader when it is no course file at all.
 */
export function checkCourseDocument(text: string, where: string): CheckedDocument {
  const reading = readSource(new TextEncoder().encode(text), `${where}.geojson`)
  if (reading.kind !== 'geojson')
    throw new Failure(
      'MAR-FILE-007',
      'A course is kept as a course file (GeoJSON). Import other sources first.',
      where,
    )
  const { course, faults } = assembleCourse(reading.features, reading)
  return { name: course.name, faults: [...reading.faults, ...faults, ...checkCourse(course)] }
}
