import { polylineLength } from '#numbers/geometry/polyline.ts'
import type { Course, HoleLine } from './course.ts'
import { markersOf } from './holes/markers.ts'
import { servingTees } from './serving-tees.ts'
import { CARD_CLOSES_METRES, CARD_CLOSES_SHARE } from './settings.ts'

/** A length on the card beside that of the survey. */
export interface CardLength {
  /** Name of the markers; empty for the hole's own length. */
  readonly tee: string
  readonly cardMetres: number
  /** Along the line, metres: from those markers, or for the hole's own length from the line's start and from every tee. Empty when the survey lacks the tee. */
  readonly measured: readonly number[]
  /** True when one of them is the card's length, as nearly as lengths are taken. */
  readonly isClosed: boolean
}

/** Every length that the card gives for a hole, and whether the survey closes with it. */
export function cardLengths(course: Course, hole: HoleLine): CardLength[] {
  const line = polylineLength(hole.line)
  if (line < 1) return []
  const fromTees = servingTees(course, hole).map((tee) => ({
    name: tee.name.toLowerCase(),
    metres: lengthFrom(course, hole, tee.name),
  }))
  return Object.entries(hole.cardLengths).map(([tee, cardMetres]) => {
    const mapped = fromTees.filter(({ name }) => tee === '' || name === tee.toLowerCase())
    // The card's own length may be that of the line or of any tee; a named one is that tee's, if it is mapped.
    const measured = [...(tee === '' ? [line] : []), ...mapped.map(({ metres }) => metres)]
    return { tee, cardMetres, measured, isClosed: measured.some((metres) => closesWith(cardMetres, metres)) }
  })
}

/** Whether a measured length is that of the card, as nearly as lengths are taken. */
export function closesWith(cardMetres: number, measured: number): boolean {
  return Math.abs(cardMetres - measured) <= Math.max(CARD_CLOSES_METRES, CARD_CLOSES_SHARE * cardMetres)
}

function lengthFrom(course: Course, hole: HoleLine, teeName: string): number {
  const markers = markersOf(course, hole, teeName, 0)
  return polylineLength([markers.position, ...markers.onward])
}
