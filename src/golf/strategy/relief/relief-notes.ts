import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { BallInTrouble, BallSituation } from './ball-situation.ts'

/** Whose word counts, on every answer about the Rules. */
export const RULING =
  'Worked out from a survey. The Committee’s Local Rules and a referee’s ruling stand above it.'

/** What must be said beside the options: what has to be true for them, how a ball is dropped, and when this may be asked. */
export function reliefNotes(
  { said, ball }: BallInTrouble,
  { relief, ground }: BallSituation,
  hasPathRelief: boolean,
): string[] {
  const { searchMinutes, devices } = RULES_2023
  const notes: string[] = []
  if (relief === 'penalty-red' || relief === 'penalty-yellow')
    notes.push(
      'A ball that is not found must be known, or be all but certain, to be in the penalty area; else it is lost and only stroke and distance is left (Rule 17.1c).',
      'The point of crossing is the player’s honest estimate (Rule 1.3b(2)); this one follows from where the stroke was made and where the ball ended.',
    )
  if (relief === 'lost')
    notes.push(
      `A ball is lost when it is not found within ${searchMinutes} minutes of search (Rule 18.2a). A provisional ball saves the walk back (Rule 18.3).`,
    )
  if (relief === 'lost' && (ground === 'penalty-red' || ground === 'penalty-yellow'))
    notes.push(
      'If it is known, or all but certain, that the ball is in the penalty area, it is not lost: ask for the relief from there (Rule 17.1c).',
    )
  if (relief === 'out')
    notes.push(
      'A ball is out only when all of it is outside the boundary (Rule 18.2a). A provisional ball saves the walk back (Rule 18.3).',
    )
  if ((relief === 'out' || relief === 'lost') && ball !== null)
    notes.push(
      'Local Rule E-5, where it is in force, is not open to a player whose provisional ball is in play. Its area is drawn from memory of the model Rule: the Committee’s own wording counts.',
    )
  if (relief === 'unplayable' || relief === 'unplayable-in-bunker')
    notes.push('Only the player decides that a ball is unplayable (Rule 19.1).')
  if (said === 'nothing' && hasPathRelief)
    notes.push(
      'Free relief holds only where the path has a made surface and the Committee has not made it part of the course (Rule 16.1).',
    )
  notes.push(
    'Drop from knee height; the ball must come to rest in the relief area, in the area of the course where it first touched the ground, else drop again (Rule 14.3).',
    `For lessons, practice and the talk after a round: in a counting round advice for where the ball lies may not be worked out (Rule ${devices.clause}).`,
  )
  return notes
}
