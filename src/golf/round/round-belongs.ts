import { fieldsOf } from './fields-of.ts'
import type { RoundFacts } from './kept-round.ts'
import { roundObject } from './parse-round.ts'

/** Whose round it is and where it was played, as far as the file says. */
export interface RoundBelongs
  extends Pick<RoundFacts, 'date' | 'course' | 'courseId' | 'player' | 'playerId'> {
  /** A round that counts and is still being written down: nothing may be worked out from it yet. */
  readonly isOpen: boolean
}

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
