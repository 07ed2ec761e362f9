import { holeResult, type MatchState, matchState } from '#golf/rules/match-state.ts'

/** How a hole of a match ended, from the side of the first. */
interface MatchHole {
  readonly ref: string
  readonly result: -1 | 0 | 1
}

/** How two sides stand, from the side of the first. */
export interface SideMatch extends MatchState {
  /** Holes that the match is over. */
  readonly of: number
  readonly holes: readonly MatchHole[]
}

/** What counts on a hole for a side; `null` = not holed out. */
interface CountedHole {
  readonly ref: string
  readonly counts: number | null
}

/**
 * Two sides' net scores as a match over the first one's holes in their order. It ends at the first hole that the other has not logged.
 * Source: Rules of Golf 2023, 3.2 and 23.
 */
export function sideMatch(
  own: readonly CountedHole[],
  theirs: readonly CountedHole[],
  holesOfCourse: number,
): SideMatch {
  const holes: MatchHole[] = []
  for (const { ref, counts } of own) {
    const other = theirs.find((hole) => hole.ref === ref)
    if (other === undefined) break
    holes.push({ ref, result: holeResult(counts, other.counts) })
  }
  const results = holes.map(({ result }) => result)
  const of = holesOfMatch(holesOfCourse, own.length)
  return { ...matchState(results, of), of, holes }
}

/**
 * Holes that a match is over: those of the course. A log that stops early was decided there, which over eighteen is never
 * before the tenth hole, so one of nine or fewer is of a match over nine.
 */
function holesOfMatch(ofCourse: number, logged: number): number {
  return Math.min(ofCourse, logged <= SHORT_MATCH ? SHORT_MATCH : Number.POSITIVE_INFINITY)
}
const SHORT_MATCH = 9
