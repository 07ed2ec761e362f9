import { useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { keptDesk } from '../desk/kept-desk.ts'
import { type Library, troubleOf, useCourse } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import type { Heading } from './asked-line.ts'

/** The hole that shots are put down on, and the line they are asked for. */
export interface PlayedHole {
  readonly courseId: string
  readonly course: Course | null
  /** `null` while the course is fetched. */
  readonly hole: Hole | null
  readonly heading: Heading
  readonly trouble: Trouble | null
  readonly chooseCourse: (id: string) => void
  readonly chooseHole: (ref: string) => void
  readonly aim: (heading: Heading) => void
}

/** Begins with the hole, the tee and the line of the desk as it was left; else with the first hole of the first course. */
export function usePlayedHole(library: Library, isWanted: boolean): PlayedHole {
  const [chosen, setChosen] = useState(() => {
    const left = keptDesk(library, sessionStorage)
    return {
      courseId: left?.courseId ?? library.courses[0]?.id ?? '',
      ref: left?.holeRef ?? null,
      tee: left?.teeName ?? null,
      heading: left?.aimDegrees ?? 0,
    }
  })
  const { value: course, trouble } = useCourse(isWanted ? chosen.courseId : null)
  const cut = useMemo((): { hole: Hole | null; trouble: Trouble | null } => {
    const ref = course?.holes.find((hole) => hole.ref === chosen.ref)?.ref ?? course?.holes[0]?.ref
    if (course === null || ref === undefined) return { hole: null, trouble: null }
    try {
      const tee = chosen.tee === null ? {} : { tee: chosen.tee }
      return { hole: holeFromCourse(course, ref, tee), trouble: null }
    } catch (error) {
      return { hole: null, trouble: troubleOf(error) }
    }
  }, [course, chosen.ref, chosen.tee])
  const fresh = { tee: null, heading: 0 }
  return {
    courseId: chosen.courseId,
    course,
    hole: cut.hole,
    heading: chosen.heading,
    trouble: trouble ?? cut.trouble,
    chooseCourse: (courseId) => setChosen({ ...fresh, courseId, ref: null }),
    chooseHole: (ref) => setChosen((before) => ({ ...before, ...fresh, ref })),
    aim: (heading) => setChosen((before) => ({ ...before, heading })),
  }
}
