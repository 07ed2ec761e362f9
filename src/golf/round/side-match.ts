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
 * Two sides' net scores as a match over their holes in the order they were played. It ends at the first hole that one of them has not
 * logged, from whichever side it is told.
 * Source: Rules of Golf 2023, 3.2 and 23.
 */
export function sideMatch(
  own: readonly CountedHole[],
  theirs: readonly CountedHole[],
  holesOfCourse: number,
): SideMatch {
  const holes: MatchHole[] = []
  const inOrder = ordered(own, theirs)
  for (const [index, { ref, counts }] of own.entries()) {
    const other = inOrder[index]
    if (other?.ref !== ref) break
    holes.push({ ref, result: holeResult(counts, other.counts) })
  }
  const results = holes.map(({ result }) => result)
  const of = holesOfMatch(holesOfCourse, Math.max(own.length, theirs.length))
  return { ...matchState(results, of), of, holes }
}

/** The same holes in another order are in the order of the first; other holes stay as they are. */
function ordered(own: readonly CountedHole[], theirs: readonly CountedHole[]): readonly CountedHole[] {
  const found = own.flatMap(({ ref }) => theirs.find((hole) => hole.ref === ref) ?? [])
  return found.length === own.length && found.length === theirs.length ? found : theirs
}

/**
 * Holes that a match is over: those of the course. A log that stops early was decided there, which over eighteen is never
 * before the tenth hole, so one of nine or fewer is of a match over nine.
 */
function holesOfMatch(ofCourse: number, logged: number): number {
  return Math.min(ofCourse, logged <= SHORT_MATCH ? SHORT_MATCH : Number.POSITIVE_INFINITY)
}
const SHORT_MATCH = 9
