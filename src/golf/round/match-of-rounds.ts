import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { holeResult, type MatchState, matchState } from '#golf/rules/match-state.ts'
import { matchStrokes } from '#golf/rules/match-strokes.ts'
import { strokesReceived } from '#golf/rules/strokes-received.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import { type Round, scoreOf } from './round.ts'

/** A player with the round that was logged, and the tees it was played from. */
export interface PlayedRound {
  readonly player: Player
  readonly round: Round
  readonly tee: string | null
}

/** How two rounds stand as a match, from the side of the first. */
export interface RoundMatch extends MatchState {
  /** Strokes that the first receives; fewer than 0 are given. */
  readonly received: number
  readonly holes: readonly { readonly ref: string; readonly result: -1 | 0 | 1 }[]
}

/**
 * Two logged rounds as a match over the first one's holes in their order: net by the difference of the playing handicaps, or
 * level where the tees are not rated. It ends at the first hole that the other has not logged. Sources: Rules of Golf 2023,
 * 3.2; Rules of Handicapping 2024, Appendix C.
 */
export function matchOfRounds(course: Course, own: PlayedRound, theirs: PlayedRound): RoundMatch {
  const allowance = HANDICAP_ALLOWANCES['Individual match play']
  const [first, second] = [own, theirs].map(({ player, tee }) =>
    handicapOn(course.teeSets, tee ?? '', player, allowance),
  )
  const [ownStrokes, theirStrokes] =
    first == null || second == null ? [0, 0] : (matchStrokes([first, second]) as [number, number])
  const holes: { readonly ref: string; readonly result: -1 | 0 | 1 }[] = []
  for (const logged of own.round.holes) {
    const other = theirs.round.holes.find(({ ref }) => ref === logged.ref)
    if (other === undefined) break
    const index = course.holes.find(({ ref }) => ref === logged.ref)?.strokeIndex ?? null
    const net = (hole: typeof logged, strokes: number): number | null =>
      hole.isPickedUp ? null : scoreOf(hole) - (index === null ? 0 : strokesReceived(strokes, index))
    holes.push({ ref: logged.ref, result: holeResult(net(logged, ownStrokes), net(other, theirStrokes)) })
  }
  return {
    ...matchState(
      holes.map(({ result }) => result),
      holesOfMatch(course, own.round),
    ),
    received: ownStrokes - theirStrokes,
    holes,
  }
}

/**
 * Holes that a match is over: those of the course. A log that stops early was decided there, which over eighteen is never
 * before the tenth hole, so one of nine or fewer is of a match over nine.
 */
function holesOfMatch(course: Course, round: Round): number {
  return Math.min(
    course.holes.length,
    round.holes.length <= SHORT_MATCH ? SHORT_MATCH : Number.POSITIVE_INFINITY,
  )
}
const SHORT_MATCH = 9
