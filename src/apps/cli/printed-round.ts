import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Player } from '#golf/player/player.ts'
import { readPart } from '#outside/print/read-part.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import type { BookFacts, RoundFacts } from '#paper/book/book-facts.ts'
import {
  bookFacts as factsOfPlayer,
  roundFacts as factsOfRound,
  type HoleAnswer,
} from '#paper/book/facts-of-round.ts'
import { rulerOf } from '#paper/draw/ruler.ts'
import type { AskedBook } from './book-options.ts'
import type { BatchRow } from './plan-batch.ts'

/** What is printed for every player. */
export interface PrintedRound {
  readonly course: Course
  readonly day: Day
  readonly asked: AskedBook
  /** Every hole asked for as it is played, in order. */
  readonly holes: readonly Hole[]
  /** Holes of the round that cannot be laid out, and why. */
  readonly left: readonly { readonly hole: string; readonly message: string }[]
}

/**
 * Lays out the holes asked for. Of a round one that cannot be is set aside with its reason; throws a Failure when none can,
 * and what a single hole throws.
 */
export function printedRound(course: Course, ref: string, day: Day, asked: AskedBook): PrintedRound {
  const { tee } = asked.question
  const holes: Hole[] = []
  const failures: { readonly hole: string; readonly failure: Failure }[] = []
  for (const one of ref === 'all' ? course.holes.map((line) => line.ref) : [ref]) {
    try {
      holes.push(holeFromCourse(course, one, { tee, day }))
    } catch (error) {
      if (!(error instanceof Failure)) throw error
      failures.push({ hole: one, failure: error })
    }
  }
  const [first] = failures
  if (holes.length === 0)
    throw (
      first?.failure ??
      new Failure('MAR-COURSE-001', `${course.name || 'This course'} has no holes.`, '--hole')
    )
  const left = failures.map(({ hole, failure }) => ({ hole, message: failure.message }))
  return { course, day, asked, holes, left }
}

/** What is printed for one player, with the plans there are. */
export function bookFacts(round: PrintedRound, player: Player, rows: readonly BatchRow[]): BookFacts {
  const answers = round.holes.map((hole): HoleAnswer => {
    const row = rows.find(
      (one) => ('planned' in one ? one.planned.hole.ref : one.unplanned.hole) === hole.ref,
    )
    if (row === undefined) return { hole, missing: '' }
    return 'planned' in row ? row.planned : { hole, missing: row.unplanned.message }
  })
  return factsOfPlayer(roundFacts(round), round.course, player, answers)
}

/** What is printed for all alike. */
export function roundFacts({ course, day, asked, holes }: PrintedRound): RoundFacts {
  const { purpose, units, paper, hasFolds } = asked
  return factsOfRound(course, holes, {
    day,
    purpose,
    paper,
    hasFolds,
    ruler: rulerOf(units),
    letters: printedLetters(readPart),
  })
}
