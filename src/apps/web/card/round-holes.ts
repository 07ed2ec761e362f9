import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { teeNames } from '../documents/load-course.ts'
import { troubleOf } from '../documents/use-library.ts'

/** Every hole of a course as it is played from a tee on a day; of one that cannot be laid out the reason. `tee`: empty = the usual one. */
export function roundHoles(
  course: Course,
  tee: string,
  day: Day,
): { readonly holes: readonly Hole[]; readonly left: readonly string[] } {
  const holes: Hole[] = []
  const left: string[] = []
  for (const { ref } of course.holes)
    try {
      holes.push(holeFromCourse(course, ref, { day, ...(tee === '' ? {} : { tee }) }))
    } catch (error) {
      left.push(`Hole ${ref} is on no page: ${troubleOf(error).message}`)
    }
  return { holes, left }
}

/** The tees that any hole is played from. */
export function teesOf(course: Course): string[] {
  return [...new Set(course.holes.flatMap(({ ref }) => teeNames(course, ref)))]
}
