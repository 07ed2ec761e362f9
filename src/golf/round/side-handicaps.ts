import { Failure } from '#faults/failure.ts'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { playingHandicap, sidePlayingHandicap, type TeeRating } from '#golf/rules/course-handicap.ts'
import { matchStrokes } from '#golf/rules/match-strokes.ts'
import { ratingOn } from '#golf/strategy/handicap-on.ts'
import { allowanceOf, type Competition } from './competition.ts'
import type { EnteredRound, EnteredSide } from './entered-side.ts'

/** Handicaps of the balls of all sides, side by side in their order. */
export interface BallHandicaps {
  /** What was kept of the course handicap, per cent; a list is what partners give to one ball. */
  readonly allowance: number | readonly number[]
  readonly playing: readonly number[]
  /** Strokes received in this form of play: in a match the lowest goes down to zero. */
  readonly received: readonly number[]
}

const ROUND_HOLES = 18

/**
 * The playing handicap of every ball. Throws MAR-SCORE-003 where the card does not say enough and MAR-SCORE-002 where the tees have not the
 * same par: what a Committee gives for that Marram does not know. Sources: Rules of Handicapping 2024, 6.1, 6.2 and Appendix C.
 */
export function sideHandicaps(
  course: Course,
  { play, by, allowance: own }: Competition,
  sides: readonly EnteredSide[],
): BallHandicaps {
  if (course.holes.length !== ROUND_HOLES)
    throw lacking(
      `Handicaps are of ${ROUND_HOLES} holes; the course has ${course.holes.length}.`,
      course.name,
    )
  const unindexed = course.holes.find(({ strokeIndex }) => strokeIndex === null)
  if (unindexed !== undefined)
    throw lacking('The hole has no stroke index, so no strokes can be given.', `hole ${unindexed.ref}`)
  const partners = sides[0]?.players.length ?? 0
  const allowance = own ?? allowanceOf(play, by, partners)
  if (allowance === null)
    throw lacking(`No allowance is published for ${play} by ${by}: give the Committee's.`, '--allowance')
  const unlike = sides.find(({ players }) => players.length !== partners)
  if (unlike !== undefined)
    throw new Failure('MAR-SCORE-001', 'The two sides have not the same number of players.', '--opponent')
  const pars = new Map<number, string>()
  const rated = (player: Player, round: EnteredRound): TeeRating => {
    const rating = ratingOf(course, player, round)
    pars.set(rating.par, round.file)
    return rating
  }
  const playing = sides.flatMap(({ players, rounds }) =>
    typeof allowance === 'number'
      ? players.map((player, ball) => playingHandicap(rated(player, rounds[ball] as EnteredRound), allowance))
      : [
          sidePlayingHandicap(
            players.map((player) => rated(player, rounds[0] as EnteredRound)),
            allowance,
          ),
        ],
  )
  const [[par] = [], [otherPar, file] = []] = [...pars]
  if (otherPar !== undefined)
    throw new Failure(
      'MAR-SCORE-002',
      `These tees have par ${otherPar}, the others ${par}: strokes for that are the Committee's. Score gross, or from tees of one par.`,
      `${file}: tee`,
    )
  return { allowance, playing, received: by === 'match' ? matchStrokes(playing) : playing }
}

function ratingOf(course: Course, player: Player, { file, tee }: EnteredRound): TeeRating {
  if (tee === null)
    throw lacking('The round does not say which tees were played: name them, or score gross.', `${file}: tee`)
  const rating = ratingOn(course.teeSets, tee, player)
  if (rating !== null) return rating
  const rated = course.teeSets.filter(
    ({ courseRating, slopeRating }) => courseRating !== null && slopeRating !== null,
  )
  const names = rated.map(({ name }) => name).join(', ')
  throw lacking(
    `The course file does not rate the tees ${tee}${names === '' ? '' : `; it rates ${names}`}. Score gross to leave handicaps out.`,
    `${file}: tee`,
  )
}

function lacking(message: string, where: string): Failure {
  return new Failure('MAR-SCORE-003', message, where)
}
