import { Failure } from '#faults/failure.ts'
import type { Hole } from '#golf/course/hole.ts'

/** Throws a Failure for a hole whose survey lacks the green: nothing can be weighed without an end. */
export function requireGreen({ green, ref }: Pick<Hole, 'green' | 'ref'>): void {
  if (green !== null) return
  throw new Failure(
    'MAR-PLAN-001',
    `Hole ${ref} cannot be planned: the survey has no green for it. Draw or type the green first.`,
    `hole ${ref}`,
  )
}
