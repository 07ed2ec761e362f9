import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { type Competition, SIDES } from './competition.ts'
import type { Round } from './round.ts'
import { isPlayedOn } from './round-belongs.ts'

/** A round that is scored, and where it came from. */
export interface EnteredRound {
  readonly file: string
  readonly round: Round
  /** The course as the round names it; `null` = it does not. */
  readonly course: string | null
  /** Markers played from; `null` = nobody said. */
  readonly tee: string | null
}

/** A side: its players, and a round for each ball. */
export interface EnteredSide {
  readonly players: readonly Player[]
  readonly rounds: readonly EnteredRound[]
}

/** Throws MAR-SCORE-001 where there are not as many sides, players or rounds as the form of play has. */
export function requireSides({ play, by }: Competition, sides: readonly EnteredSide[]): void {
  if (by === 'match' && sides.length < 2)
    throw new Failure('MAR-SCORE-001', 'A match has two sides: give the other with --opponent.', '--opponent')
  const { least, most, hasOwnBalls } = SIDES[play]
  for (const [number, { players, rounds }] of sides.entries()) {
    const [playerOption, roundOption] = OPTIONS[number] as (typeof OPTIONS)[number]
    if (players.length < least || players.length > most)
      throw new Failure(
        'MAR-SCORE-001',
        `A side in ${play} has ${least === most ? least : `${least} to ${most}`} of ${playerOption}; there ${isOrAre(players.length)}.`,
        playerOption,
      )
    const balls = hasOwnBalls ? players.length : 1
    if (rounds.length !== balls)
      throw new Failure(
        'MAR-SCORE-001',
        `A side in ${play} has ${balls} of ${roundOption}, ${hasOwnBalls ? 'one for each player and in their order' : 'for its one ball'}; there ${isOrAre(rounds.length)}.`,
        roundOption,
      )
  }
}

const OPTIONS = [
  ['--player', '--round'],
  ['--opponent', '--opponent-round'],
] as const

function isOrAre(count: number): string {
  return count === 1 ? 'is 1' : `are ${count}`
}

/**
 * What does not fit between rounds that are scored together. Throws MAR-SCORE-002 for one of another course and MAR-COURSE-001 for a
 * hole that the course lacks; another day or other holes are faults.
 */
export function checkRounds(course: Course, sides: readonly EnteredSide[], by: Competition['by']): Fault[] {
  const rounds = sides.flatMap((side) => side.rounds)
  for (const { file, round, course: named } of rounds) {
    if (!isPlayedOn(named, course.name))
      throw new Failure(
        'MAR-SCORE-002',
        `The round was played on ${named}, the course file is of ${course.name}.`,
        `${file}: course`,
      )
    for (const { ref, place } of round.holes)
      if (!course.holes.some((hole) => hole.ref === ref))
        throw new Failure('MAR-COURSE-001', `${course.name} has no hole ${ref}.`, `${file}: ${place}`)
  }
  return [...differentDays(rounds), ...(by === 'match' ? [] : differentHoles(course, sides))]
}

function differentDays(rounds: readonly EnteredRound[]): Fault[] {
  const [first, ...others] = rounds.filter(({ round }) => round.date !== null)
  return others
    .filter(({ round }) => round.date !== first?.round.date)
    .map(
      ({ file, round }): Fault => ({
        severity: 'warning',
        code: 'MAR-SCORE-004',
        message: `The round was played on ${round.date}, ${first?.file} on ${first?.round.date}.`,
        place: `${file}: date`,
        advice: 'Give the rounds of one day.',
      }),
    )
}

/** Totals of two sides say nothing beside each other when they are not of the same holes. */
function differentHoles(course: Course, sides: readonly EnteredSide[]): Fault[] {
  if (sides.length < 2) return []
  const holesOf = ({ rounds }: EnteredSide): Set<string> =>
    new Set(rounds.flatMap(({ round }) => round.holes.map(({ ref }) => ref)))
  const played = sides.map(holesOf)
  return sides.flatMap(({ rounds }, side): Fault[] => {
    const lacking = course.holes
      .map(({ ref }) => ref)
      .filter((ref) => played.some((one) => one.has(ref)) && !played[side]?.has(ref))
    if (lacking.length === 0) return []
    return [
      {
        severity: 'error',
        code: 'MAR-SCORE-004',
        message: `${lacking.length === 1 ? 'Hole' : 'Holes'} ${lacking.join(', ')} ${lacking.length === 1 ? 'was' : 'were'} logged by the other side only: the totals are not of the same holes.`,
        place: rounds.map(({ file }) => file).join(', '),
        advice: 'Log the missing holes, or compare no totals.',
      },
    ]
  })
}
