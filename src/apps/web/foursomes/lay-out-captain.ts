import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { PairedHole } from '#golf/round/foursome-table.ts'
import type { Partners } from '#golf/strategy/alternate-shot.ts'
import type { TeeSplit } from '#golf/strategy/split-tees.ts'
import { captainSheet } from '#paper/book/captain-sheet.ts'
import { checkPages } from '#paper/book/check-pages.ts'
import { roundFacts } from '#paper/book/facts-of-round.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { rulerOf } from '#paper/draw/ruler.ts'
import type { CardChoice } from '../card/card-choice.ts'
import { withFonts } from '../card/fonts.ts'

/** What the captain's sheet is made of. */
export interface AskedCaptain {
  readonly course: Course
  readonly day: Day
  readonly names: Partners<string>
  readonly holes: readonly PairedHole[]
  readonly split: TeeSplit
  readonly choice: CardChoice
  readonly units: 'yards' | 'metres'
}

/** The captain's sheet as it will print, and what may not be carried. */
interface LaidCaptain {
  readonly sheets: readonly Drawing[]
  readonly faults: readonly Fault[]
}

/** Lays the captain's sheet out. Rejects where the letters cannot be fetched. */
export async function layOutCaptain(asked: AskedCaptain): Promise<LaidCaptain> {
  const { course, day, names, holes, split, choice, units } = asked
  const { purpose, paper, hasFolds } = choice
  const { pressLetters } = await import('../card/press.ts')
  return withFonts(() => {
    const setting = { day, purpose, paper, hasFolds, ruler: rulerOf(units), letters: pressLetters() }
    const facts = roundFacts(
      course,
      holes.map(({ hole }) => hole),
      setting,
    )
    const pages = captainSheet(facts, names, holes, split)
    return {
      sheets: pages.map(({ drawing }) => drawing),
      faults: checkPages(pages, purpose, course.localRules),
    }
  })
}
