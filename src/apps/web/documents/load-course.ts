import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { Course } from '#golf/course/course.ts'
import { servingTees } from '#golf/course/serving-tees.ts'
import { parseGeojson } from '#outside/formats/geojson.ts'
import { fetchDocument } from './fetch-document.ts'

/** A course of the store, ready to play. Throws a Failure when it cannot be read. */
export async function loadCourse(id: string): Promise<Course> {
  const reading = parseGeojson(await fetchDocument('courses', id), `courses/${id}`)
  return assembleCourse(reading.features, reading).course
}

/** Names of the tees a hole is played from, nearest the start of its line first, each once. */
export function teeNames(course: Course, ref: string): string[] {
  const hole = course.holes.find((candidate) => candidate.ref === ref)
  if (hole === undefined) return []
  return [...new Set(servingTees(course, hole).map((tee) => tee.name))].filter((name) => name !== '')
}
