import type { Fault, Severity } from '#faults/fault.ts'
import { checkCard } from './checks/check-card.ts'
import { checkGreenHeights } from './checks/check-green-heights.ts'
import { checkGreens } from './checks/check-greens.ts'
import { checkHoleLines } from './checks/check-hole-lines.ts'
import { checkNumbers } from './checks/check-numbers.ts'
import { checkOutlines } from './checks/check-outlines.ts'
import { checkPlaces } from './checks/check-places.ts'
import { checkPositions } from './checks/check-positions.ts'
import { checkRefs } from './checks/check-refs.ts'
import { checkTees } from './checks/check-tees.ts'
import type { Course } from './course.ts'

const CHECKS: readonly ((course: Course) => Fault[])[] = [
  checkHoleLines,
  checkRefs,
  checkCard,
  checkTees,
  checkGreens,
  checkGreenHeights,
  checkOutlines,
  checkNumbers,
  checkPlaces,
]

const ORDER: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 }

/** Everything wrong with a course, worst first; empty when nothing is. Never throws: what cannot be measured is a fault too. */
export function checkCourse(course: Course): Fault[] {
  const { sound, faults } = checkPositions(course)
  return [...faults, ...CHECKS.flatMap((check) => check(sound))].sort(
    (a, b) => ORDER[a.severity] - ORDER[b.severity],
  )
}
