import type { Fault } from '#faults/fault.ts'
import type { Course } from './course.ts'
import type { Day } from './day.ts'

/** Pins and markers of a day for holes that the course does not have: they would change nothing and nobody would know. */
export function checkDay(day: Day, course: Course): Fault[] {
  const refs = new Set(course.holes.map((hole) => hole.ref))
  const stray = (field: 'pins' | 'tees', what: string): Fault[] =>
    Object.keys(day[field])
      .filter((ref) => !refs.has(ref))
      .map((ref) => ({
        severity: 'warning',
        code: 'MAR-DAY-007',
        message: `The day has ${what} for hole ${ref}, which ${course.name || 'this course'} does not have.`,
        place: `${field}.${ref}`,
        advice: 'Write the ref of a hole of this course; nothing was done with it.',
      }))
  return [...stray('pins', 'a pin'), ...stray('tees', 'markers')]
}
