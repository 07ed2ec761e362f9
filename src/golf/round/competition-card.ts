import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { type BallHole, ballCard } from './ball-card.ts'
import { type Competition, SIDES } from './competition.ts'
import { checkRounds, type EnteredRound, type EnteredSide, requireSides } from './entered-side.ts'
import { type SideCard, sideCard } from './side-card.ts'
import { type BallHandicaps, sideHandicaps } from './side-handicaps.ts'
import { type SideMatch, sideMatch } from './side-match.ts'

/** A ball of a side: who plays it, and its holes. */
export interface CardBall {
  readonly players: readonly Player[]
  readonly tee: string | null
  /** `null` = played gross. */
  readonly playingHandicap: number | null
  /** Strokes received over eighteen holes. */
  readonly received: number
  readonly holes: readonly BallHole[]
}

/** A side with its balls and what counts of them. */
export interface CardSide extends SideCard {
  readonly balls: readonly CardBall[]
}

/** The card of one side or of two. */
export interface CompetitionCard {
  /** Per cent of the course handicap; `null` = played gross. */
  readonly allowance: BallHandicaps['allowance'] | null
  readonly sides: readonly CardSide[]
  /** From the first side; `null` where no match is played. */
  readonly match: SideMatch | null
  /** Holes of the course. */
  readonly of: number
  readonly faults: readonly Fault[]
}

/**
 * The card of one side or of two sides in a form of play. Throws MAR-SCORE-001 to 003 and MAR-COURSE-001, placed, for what cannot be scored. Sources: Rules
 * of Golf 2023, 3.2, 3.3 and 21 to 23; Rules of Handicapping 2024, 6 and Appendix C.
 */
export function competitionCard(
  course: Course,
  competition: Competition,
  entered: readonly EnteredSide[],
): CompetitionCard {
  const { play, by, limit, isGross } = competition
  requireSides(competition, entered)
  const faults = checkRounds(course, entered, by)
  requirePar(course, by)
  const handicaps = isGross ? null : sideHandicaps(course, competition, entered)
  let number = 0
  const sides = entered.map(({ players, rounds }): CardSide => {
    const balls = rounds.map(({ round, tee }: EnteredRound, ball): CardBall => {
      const received = handicaps?.received[number] ?? 0
      const playingHandicap = handicaps?.playing[number] ?? null
      number += 1
      return {
        players: SIDES[play].hasOwnBalls ? [players[ball] as Player] : players,
        tee,
        playingHandicap,
        received,
        holes: ballCard(course, round, received, { by, limit }),
      }
    })
    return {
      balls,
      ...sideCard(
        balls.map(({ holes }) => holes),
        by,
      ),
    }
  })
  const [own, theirs] = sides
  return {
    allowance: handicaps?.allowance ?? null,
    sides,
    match:
      by === 'match' && own !== undefined && theirs !== undefined
        ? sideMatch(own.holes, theirs.holes, course.holes.length)
        : null,
    of: course.holes.length,
    faults,
  }
}

/** Points, par and a maximum are reckoned from par. */
function requirePar(course: Course, by: Competition['by']): void {
  if (by === 'strokes' || by === 'match') return
  const without = course.holes.find(({ par }) => par === null)
  if (without !== undefined)
    throw new Failure(
      'MAR-SCORE-003',
      `The hole has no par, which ${by} is reckoned from.`,
      `hole ${without.ref}`,
    )
}
