import { LESSON_STEPS, type Lesson, NEW_LESSON } from './lesson.ts'

const KEPT = 'marram.lesson'

/** Keeps how far the reader has come; a full or forbidden storage keeps nothing. */
export function keepLesson(lesson: Lesson, place: Pick<Storage, 'setItem'>): void {
  try {
    place.setItem(KEPT, JSON.stringify(lesson))
  } catch {
    // Nothing is lost but the comfort.
  }
}

/** The lesson as it was left; a new one when none was kept or it has another shape. */
export function keptLesson(place: Pick<Storage, 'getItem'>): Lesson {
  try {
    const kept: unknown = JSON.parse(place.getItem(KEPT) ?? 'null')
    if (typeof kept !== 'object' || kept === null) return NEW_LESSON
    const { at, done, clubBefore } = kept as Partial<Record<keyof Lesson, unknown>>
    if (!Array.isArray(done) || !Number.isInteger(at)) return NEW_LESSON
    return {
      at: Math.max(0, Math.min(LESSON_STEPS.length, Number(at))),
      done: LESSON_STEPS.filter((step) => done.includes(step)),
      clubBefore: typeof clubBefore === 'string' ? clubBefore : null,
    }
  } catch {
    return NEW_LESSON
  }
}
