import { METRES_PER_YARD } from '#numbers/units/units.ts'
import type { Desk } from '../desk/desk.ts'

/** The steps of the first lesson, in their order. */
export const LESSON_STEPS = ['hole', 'aim', 'water', 'undo', 'club', 'carries', 'print'] as const
export type LessonStep = (typeof LESSON_STEPS)[number]

/** How far a reader has come. */
export interface Lesson {
  /** The step that is shown, counted from 0; one more than there are = the end. */
  readonly at: number
  /** What the reader has really done. */
  readonly done: readonly LessonStep[]
  /** The plan's club while every hazard lay as surveyed; `null` = not seen yet. */
  readonly clubBefore: string | null
}

export const NEW_LESSON: Lesson = { at: 0, done: [], clubBefore: null }

/** What the lesson sees of the desk. */
export interface Seen {
  readonly desk: Desk
  /** The hole of the lesson with its player is on the desk. */
  readonly isSample: boolean
  /** The club of the plan of what is on the desk; `null` while it is reckoned. */
  readonly club: string | null
  /** Something was taken back. */
  readonly canRedo: boolean
  /** The desk was printed while it was seen. */
  readonly hasPrinted: boolean
}

/**
 * The lesson after a look at the desk: the step that is shown is ticked once it is done, and where it is ticked already
 * the next one is shown and ticked as soon as that is done. The same lesson when nothing came of it.
 */
export function lessonAfter(lesson: Lesson, seen: Seen): Lesson {
  const { club, desk } = seen
  const isSurveyed = Object.keys(desk.moved).length === 0
  const clubBefore = isSurveyed && club !== null ? club : lesson.clubBefore
  const watched = isDone(lesson, lesson.at) ? lesson.at + 1 : lesson.at
  const step = LESSON_STEPS[watched]
  if (step !== undefined && !lesson.done.includes(step) && IS_DONE[step](seen, lesson))
    return { at: watched, done: [...lesson.done, step], clubBefore }
  return clubBefore === lesson.clubBefore ? lesson : { ...lesson, clubBefore }
}

/** Whether the reader has done the step of this number. */
export function isDone(lesson: Lesson, at: number): boolean {
  return lesson.done.some((step) => step === LESSON_STEPS[at])
}

/** The lesson turned so many steps on or back, never beyond its ends. */
export function turnLesson(lesson: Lesson, by: number): Lesson {
  return { ...lesson, at: Math.max(0, Math.min(LESSON_STEPS.length, lesson.at + by)) }
}

/** Twenty are asked for; a hand that stops a little short has understood. */
const MOVED_METRES = 18 * METRES_PER_YARD
/** Own carries that are asked for. */
const CARRIES = 3

const IS_DONE: Readonly<Record<LessonStep, (seen: Seen, lesson: Lesson) => boolean>> = {
  hole: ({ isSample, club }) => isSample && club !== null,
  aim: ({ desk }) => desk.aimDegrees !== null,
  water: ({ desk, club }, { clubBefore }) =>
    club !== null &&
    clubBefore !== null &&
    club !== clubBefore &&
    Object.values(desk.moved).some(({ near, far }) => Math.min(near, far) >= MOVED_METRES),
  undo: ({ desk, canRedo }) => canRedo && Object.keys(desk.moved).length === 0,
  club: ({ desk, club }) => club !== null && desk.club !== null && desk.club !== club,
  carries: ({ desk }) => Object.keys(desk.carries).length >= CARRIES,
  print: ({ hasPrinted }) => hasPrinted,
}
