import type { Hole } from '#golf/course/hole.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { linesOf, sideWords } from '../aim-words.ts'
import type { Reader } from '../desk/desk.ts'
import { length, nextShot, strokes, unbroken } from '../words.ts'

/** A plan on its hole. */
export interface Planned {
  readonly plan: Plan
  readonly hole: Hole
}

/** One thing that two plans say differently. */
export interface ChangedPart {
  readonly what: string
  readonly here: string
  readonly there: string
}

/** What two plans say differently, in the reader's words and rounding; what they say alike is left out. */
export function changedParts(here: Planned, there: Planned, reader: Reader): readonly ChangedPart[] {
  const [one, other] = [partsOf(here, reader), partsOf(there, reader)]
  return Object.keys(one).flatMap((what) => {
    const [before, after] = [one[what] ?? '', other[what] ?? '']
    return before === after ? [] : [{ what, here: before, there: after }]
  })
}

function partsOf({ plan, hole }: Planned, reader: Reader): Readonly<Record<string, string>> {
  const [first] = plan.options
  const [next] = plan.then
  return {
    length: length(hole.lengthMetres, reader),
    club: first === undefined ? 'none' : unbroken(clubWords(first)),
    line:
      first === undefined
        ? ''
        : sideWords(first, first.aim.heading_deg, linesOf(plan.situation, hole)(first), reader),
    leaves: first === undefined ? '' : length(first.leave_m.p50, reader),
    'next shot': next === undefined ? 'the green' : unbroken(nextShot(next)),
    strokes: strokes(plan.value.strokes),
  }
}

/** Whether the stroke itself is the same: club and line. */
export function isSameStroke(parts: readonly ChangedPart[]): boolean {
  return parts.every(({ what }) => what !== 'club' && what !== 'line')
}
