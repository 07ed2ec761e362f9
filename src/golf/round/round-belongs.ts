import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { fieldsOf } from './fields-of.ts'
import type { RoundFacts } from './kept-round.ts'
import { roundObject } from './round-fields.ts'

/** Whose round it is and where it was played, as far as the file says. */
export interface RoundBelongs
  extends Pick<RoundFacts, 'date' | 'course' | 'courseId' | 'player' | 'playerId'> {
  /** A round that counts and is still being written down: nothing may be worked out from it yet. */
  readonly isOpen: boolean
}

/** Whether a round that names its course, if it does, was played on this one. */
export function isPlayedOn(named: string | null, course: string): boolean {
  return named === null || isSameName(named, course)
}

/** Names as people write them: case and blanks about them do not matter. */
export function isSameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase()
}

/** Whether a name in a file means this player: as kept, or as pages call one who is under age. */
export function isCalled(name: string, player: Pick<Player, 'name' | 'age'>): boolean {
  return isSameName(name, player.name) || isSameName(name, pageName(player.name, player.age))
}

/** Why nothing is said of a round that counts and is not closed. */
export const STILL_OPEN =
  'The round counts and is not closed: nothing is worked out from it before its end (Rule 4.3a).'

/** Whose a round of a `round/1` file is, whatever else is right or wrong in it. Throws MAR-ROUND-001. */
export function roundBelongs(text: string, where: string): RoundBelongs {
  const file = fieldsOf(roundObject(text, where), '', [])
  return {
    date: file.text('date'),
    course: file.text('course'),
    courseId: file.text('course_id'),
    player: file.text('player'),
    playerId: file.text('player_id'),
    // A file without a log was written by a person, after the round.
    isOpen: file.has('log') && file.text('purpose') !== 'practice' && !file.truth('closed'),
  }
}
