import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'

/**
 * The holes after one, to the last that counts, from the same markers; `null` where that one does not follow. Throws
 * MAR-PLAN-001 for a hole without a green.
 */
export function holesAfter(course: Course, hole: Hole, day: Day, through: string): readonly Hole[] | null {
  const refs = course.holes.map(({ ref }) => ref)
  const [from, to] = [refs.indexOf(hole.ref), refs.indexOf(through)]
  if (to < from) return null
  return refs.slice(from + 1, to + 1).map((ref) => {
    const later = holeFromCourse(course, ref, { tee: hole.teeName === '' ? undefined : hole.teeName, day })
    if (later.green === null)
      throw new Failure(
        'MAR-PLAN-001',
        `Hole ${ref} cannot be counted: the survey has no green for it. Draw or type the green first.`,
        `hole ${ref}`,
      )
    return later
  })
}
