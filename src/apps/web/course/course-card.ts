import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { teeNames } from '../documents/load-course.ts'
import { troubleOf } from '../documents/use-library.ts'

/** A hole as it stands on the card of a day. */
export interface CardHole {
  readonly ref: string
  readonly name: string | null
  /** From its usual tee; `null` where the survey lacks what a hole needs, `trouble` says what. */
  readonly hole: Hole | null
  readonly trouble: string
  /** Length from each tee with its markers as the day has them, metres. */
  readonly lengths: Readonly<Record<string, number>>
}

/** A course as its card says it, every hole as it is played on a day. */
export interface CourseCard {
  readonly holes: readonly CardHole[]
  readonly par: number
  /** Sums over the holes that a tee has, metres, with how many these are. */
  readonly tees: readonly { readonly name: string; readonly metres: number; readonly holes: number }[]
}

/** Lays out every hole of a course as it is played on a day; one that cannot be laid out says why and stops no other. */
export function courseCard(course: Course, day: Day): CourseCard {
  const holes = course.holes.map(({ ref, name }): CardHole => {
    try {
      const hole = holeFromCourse(course, ref, { day })
      const lengths = Object.fromEntries(
        teeNames(course, ref).map((tee) => [tee, holeFromCourse(course, ref, { tee, day }).lengthMetres]),
      )
      return { ref, name, hole, trouble: '', lengths }
    } catch (error) {
      return { ref, name, hole: null, trouble: troubleOf(error).message, lengths: {} }
    }
  })
  const names = [...new Set(holes.flatMap(({ lengths }) => Object.keys(lengths)))]
  return {
    holes,
    par: holes.reduce((sum, { hole }) => sum + (hole?.par ?? 0), 0),
    tees: names.map((name) => {
      const own = holes.flatMap(({ lengths }) => lengths[name] ?? [])
      return { name, metres: own.reduce((sum, metres) => sum + metres, 0), holes: own.length }
    }),
  }
}
