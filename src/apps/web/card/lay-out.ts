import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { BookFacts } from '#paper/book/book-facts.ts'
import { checkPages } from '#paper/book/check-pages.ts'
import { bookFacts, type HoleAnswer, roundFacts } from '#paper/book/facts-of-round.ts'
import { type ChangedSentence, changedSentences } from '#paper/book/own-words.ts'
import type { PrintedSheet } from '#paper/book/page.ts'
import { imposedSheets, isForAll, printedPages, printedSheets, readerOf } from '#paper/book/printed-kinds.ts'
import { rulerOf } from '#paper/draw/ruler.ts'
import { type CardChoice, kindOf } from './card-choice.ts'
import { withFonts } from './fonts.ts'
import type { HoleState } from './use-round-plans.ts'

/** What is laid out. */
export interface Asked {
  readonly course: Course
  readonly holes: readonly Hole[]
  readonly day: Day
  /** With the sentences as they are written now. */
  readonly player: Player
  readonly states: Readonly<Record<string, HoleState>>
  /** Whether plans are still to come. */
  readonly isRunning: boolean
  readonly choice: CardChoice
  readonly units: 'yards' | 'metres'
}

/** The pages as they will print. */
export interface LaidOut {
  readonly asked: Asked
  readonly facts: BookFacts
  /** What comes out of the printer. */
  readonly sheets: readonly PrintedSheet[]
  /** What may not be carried in a counting round, if it is for one. */
  readonly faults: readonly Fault[]
  /** Sentences to be looked at again. */
  readonly changed: readonly ChangedSentence[]
}

/** Lays the pages out with the widths of the printed letters, and checks them against the Rules. Rejects where the letters cannot be fetched. */
export async function layOut(asked: Asked): Promise<LaidOut> {
  const { pressLetters } = await import('./press.ts')
  const { course, holes, day, player, states, choice, units } = asked
  const { purpose, paper, hasFolds } = choice
  const kind = kindOf(choice)
  const reader = readerOf(kind)
  return withFonts(() => {
    const letters = pressLetters()
    const setting = { day, purpose, paper, hasFolds, ruler: rulerOf(units), letters }
    const round = roundFacts(course, holes, setting)
    const facts = bookFacts(
      round,
      course,
      player,
      holes.map((hole) => answerOf(hole, states[hole.ref], asked.isRunning)),
    )
    const pages = isForAll(kind)
      ? printedSheets(kind, round, GREEN_SCALE)
      : printedPages(kind, facts, GREEN_SCALE)
    return {
      asked,
      facts,
      sheets: imposedSheets(kind, pages, choice),
      faults: checkPages(pages, purpose, course.localRules),
      changed: reader === null ? [] : changedSentences(facts, reader),
    }
  })
}

/** Greens stand at 1 to this, which may be carried in any round. */
const GREEN_SCALE = 480

function answerOf(hole: Hole, state: HoleState | undefined, isRunning: boolean): HoleAnswer {
  if (state === undefined) return { hole, missing: isRunning ? '' : 'it was stopped before it was planned.' }
  return 'plan' in state ? { hole, plan: state.plan } : { hole, missing: state.missing }
}
