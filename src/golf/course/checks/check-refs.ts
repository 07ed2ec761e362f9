import type { Fault } from '#faults/fault.ts'
import type { Course } from '../course.ts'
import { HIGHEST_REF } from '../settings.ts'

/** Holes that share a ref, refs that are no hole number, and features that name a hole which is not there. */
export function checkRefs(course: Course): Fault[] {
  const refs = course.holes.map((hole) => hole.ref)
  const repeated = [...new Set(refs.filter((ref, index) => refs.indexOf(ref) !== index))]
  const stray = [...new Set(refs.filter(isStray))]
  return [
    ...repeated.map((ref): Fault => {
      const ids = course.holes.filter((hole) => hole.ref === ref).map((hole) => hole.id)
      return {
        severity: 'error',
        code: 'MAR-COURSE-016',
        message: `${ids.length} hole lines have the ref ${ref}: ${ids.join(', ')}.`,
        place: `hole ${ref}`,
        advice: 'Give each hole its own ref; keep two courses in two files.',
      }
    }),
    ...stray.map(
      (ref): Fault => ({
        severity: 'warning',
        code: 'MAR-COURSE-017',
        message: `No hole has the number ${ref}.`,
        place: `hole ${ref}`,
        advice: `Write the number on the card, 1 to ${HIGHEST_REF}, or take the line out if it is no hole.`,
      }),
    ),
    ...unknownOwners(course, new Set(refs)),
  ]
}

/** A name such as `7A` is nobody's mistake; a number that no hole has is. */
function isStray(ref: string): boolean {
  if (ref.trim() === '') return true
  const number = Number(ref)
  return !Number.isNaN(number) && !(Number.isInteger(number) && number >= 1 && number <= HIGHEST_REF)
}

function unknownOwners(course: Course, refs: ReadonlySet<string>): Fault[] {
  return [...course.areas, ...course.tees, ...course.pins].flatMap((feature) =>
    (feature.holes ?? [])
      .filter((ref) => !refs.has(ref))
      .map(
        (ref): Fault => ({
          severity: 'warning',
          code: 'MAR-COURSE-027',
          message: `${feature.id} is said to belong to hole ${ref}, which the course does not have.`,
          place: feature.id,
          advice: 'Write the ref of a hole of this course, or none to let its place decide.',
        }),
      ),
  )
}
