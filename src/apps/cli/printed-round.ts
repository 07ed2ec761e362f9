import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import type { BookFacts, RoundFacts } from '#paper/book/book-facts.ts'
import type { BookHole } from '#paper/book/planned-hole.ts'
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
  return {
    ...roundFacts(round),
    playerName: pageName(player.name, player.age),
    player,
    holes: round.holes.map((laid): BookHole => {
      const row = rows.find(
        (one) => ('planned' in one ? one.planned.hole.ref : one.unplanned.hole) === laid.ref,
      )
      const isPlanned = row !== undefined && 'planned' in row
      const hole = isPlanned ? row.planned.hole : laid
      return {
        hole,
        plan: isPlanned ? row.planned.plan : null,
        missing: row === undefined || isPlanned ? '' : row.unplanned.message,
        received: receivedOn(round.course, player, hole),
      }
    }),
  }
}

/** What is printed for all alike. */
export function roundFacts({ course, day, asked, holes }: PrintedRound): RoundFacts {
  return {
    course: course.name,
    day,
    holes: holes.map((hole) => ({ hole, plan: null, missing: '', received: null })),
    localRules: course.localRules,
    purpose: asked.purpose,
    ruler: rulerOf(asked.units),
    paper: asked.paper,
    hasFolds: asked.hasFolds,
    credit: course.credit,
    letters: printedLetters(),
  }
}

function receivedOn(course: Course, player: Player, hole: Hole): number | null {
  const allowance = HANDICAP_ALLOWANCES['Individual stroke play']
  const handicap = handicapOn(course.teeSets, hole.teeName, player, allowance)
  return handicap === null || hole.strokeIndex === null ? null : strokesReceived(handicap, hole.strokeIndex)
}
