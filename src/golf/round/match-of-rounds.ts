import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { HANDICAP_ALLOWANCES } from '#golf/rules/handicap-allowances.ts'
import { matchStrokes } from '#golf/rules/match-strokes.ts'
import { handicapOn } from '#golf/strategy/handicap-on.ts'
import { type BallHole, ballCard } from './ball-card.ts'
import type { Round } from './round.ts'
import { type SideMatch, sideMatch } from './side-match.ts'

/** A player with the round that was logged, and the tees it was played from. */
export interface PlayedRound {
  readonly player: Player
  readonly round: Round
  readonly tee: string | null
}

/** How two rounds stand as a match, from the side of the first. */
export interface RoundMatch extends SideMatch {
  /** Strokes that the first receives; fewer than 0 are given. */
  readonly received: number
  /** False where the tees of one of them are not rated: then nobody receives strokes. */
  readonly isRated: boolean
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
  const isRated = first != null && second != null
  const [ownStrokes, theirStrokes] = isRated ? (matchStrokes([first, second]) as [number, number]) : [0, 0]
  const card = ({ round }: PlayedRound, strokes: number): BallHole[] =>
    ballCard(course, round, strokes, { by: 'match', limit: { kind: 'double-par' } })
  return {
    ...sideMatch(card(own, ownStrokes), card(theirs, theirStrokes), course.holes.length),
    received: ownStrokes - theirStrokes,
    isRated,
  }
}
