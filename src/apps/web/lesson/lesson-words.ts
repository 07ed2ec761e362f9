import type { Reader } from '../desk/desk.ts'
import type { LessonStep } from './lesson.ts'

/** What a step says. */
export interface StepWords {
  /** Its name in the row of steps. */
  readonly name: string
  readonly ask: string
  /** The same without mouse or finger. */
  readonly byKeys: string
  /** What it showed, once it is done. */
  readonly shown: string
}

/** What the lesson says, in the reader's units. `hasSample` = the store still has the hole it is made for. */
export function lessonWords(
  { units }: Pick<Reader, 'units'>,
  hasSample: boolean,
): Readonly<Record<LessonStep, StepWords>> {
  return {
    hole: {
      name: 'The hole',
      ask: hasSample
        ? 'Lay out the seventh of Sandrel Ness for Aldous Brack, and read the sentence beside the chart.'
        : 'The sample course is no longer in the store. Choose a hole with water in reach, and read the sentence beside the chart.',
      byKeys: 'Tab goes from one thing to the next, Enter presses it.',
      shown: 'That sentence is the plan: the club, the line, the safe side and what it leaves.',
    },
    aim: {
      name: 'The aim',
      ask: 'Drag the ring on the chart to the right. The shots, and what the line costs, go with it.',
      byKeys: 'Tab to the ring, then the arrow keys; Home brings the best line back.',
      shown: 'The figure under the chart is what this line costs in strokes: most often very little.',
    },
    water: {
      name: 'The water',
      ask: `Drag ${hasSample ? 'Heron pool' : 'the water'} 20 ${units} on, towards the green, and watch the clubs.`,
      byKeys: 'Choose it under “Move the trouble”, then press the upward arrow on the scale “On”.',
      shown:
        'Now another club comes first. This is where the rule of thumb stops being true for this player.',
    },
    undo: {
      name: 'Back again',
      ask: 'Press Undo until the water lies where it was surveyed. Every step can be taken back.',
      byKeys: 'Control and Z takes a step back; with shift it goes forth again.',
      shown: 'Nothing that is tried here can be spoiled.',
    },
    club: {
      name: 'Your own club',
      ask: 'Press another club in the table: the one your pupil likes.',
      byKeys: 'Tab to the club, then Enter.',
      shown:
        'Its price stands beside it, and the plan goes on from there. Under 0.03 it is too close to call.',
    },
    carries: {
      name: 'Your carries',
      ask: 'Press “Type own carries” and type three that you know.',
      byKeys: 'Enter and the arrow keys go from field to field.',
      shown: 'The other clubs are filled in from these and marked as guesses.',
    },
    print: {
      name: 'The page',
      ask: 'Press Print: the plan of the hole on one page.',
      byKeys: 'Control and P does the same.',
      shown: 'Plan before the start, and take paper: in a counting round nothing may be reckoned.',
    },
  }
}

/** What is said after the last step. */
export const LESSON_END =
  'That was the lesson. Next come your own pupil, ten questions, and your own hole, a table of eight rows.'
