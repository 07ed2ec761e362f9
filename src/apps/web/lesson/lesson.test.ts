import { describe, expect, it } from 'vitest'
import { type Desk, openDesk } from '../desk/desk.ts'
import { keepLesson, keptLesson } from './kept-lesson.ts'
import {
  isDone,
  LESSON_STEPS,
  type Lesson,
  lessonAfter,
  NEW_LESSON,
  type Seen,
  turnLesson,
} from './lesson.ts'
import { lessonWords } from './lesson-words.ts'

const DESK = openDesk('course', '7', 'player')
const ON = 20 * 0.9144

function see(lesson: Lesson, desk: Partial<Desk>, seen: Partial<Seen> = {}): Lesson {
  return lessonAfter(lesson, {
    desk: { ...DESK, ...desk },
    isSample: true,
    club: '5-wood',
    canRedo: false,
    hasPrinted: false,
    ...seen,
  })
}

/** The lesson with every step before this one done. */
function upTo(step: (typeof LESSON_STEPS)[number]): Lesson {
  const at = LESSON_STEPS.indexOf(step)
  return { at, done: LESSON_STEPS.slice(0, at), clubBefore: '5-wood' }
}

const moved = (metres: number): Partial<Desk> => ({
  moved: { pool: { near: metres, far: metres, left: 0, right: 0 } },
})

describe('lessonAfter', () => {
  it('ticks each step off by what is done on the desk, in the order of the lesson', () => {
    let lesson = see(NEW_LESSON, {}, { isSample: false })
    expect(lesson.done).toEqual([])
    lesson = see(lesson, {})
    expect(lesson.done).toEqual(['hole'])
    lesson = see(lesson, { aimDegrees: 2 })
    lesson = see(lesson, moved(ON), { club: 'driver' })
    lesson = see(lesson, {}, { canRedo: true })
    lesson = see(lesson, { club: '7-iron' })
    lesson = see(lesson, { carries: { driver: 200, '7-iron': 140, putter: 1 } })
    expect(lesson.done).toHaveLength(6)
    lesson = see(lesson, {}, { hasPrinted: true })
    expect(lesson.done).toEqual(LESSON_STEPS)
    expect(turnLesson(lesson, 1).at).toBe(LESSON_STEPS.length)
  })

  it('does not tick the water while the club is the same, nor for less than was asked, nor for one edge', () => {
    const lesson = upTo('water')
    expect(see(lesson, moved(ON)).done).toEqual(lesson.done)
    expect(see(lesson, moved(ON / 2), { club: 'driver' }).done).toEqual(lesson.done)
    const stretched = { moved: { pool: { near: 0, far: ON, left: 0, right: 0 } } }
    expect(see(lesson, stretched, { club: 'driver' }).done).toEqual(lesson.done)
    expect(see(lesson, moved(ON), { club: null }).done).toEqual(lesson.done)
    expect(see(lesson, moved(ON), { club: 'driver' }).done).toContain('water')
  })

  it('holds the club against the last plan of the hole as surveyed', () => {
    const lesson = see(upTo('water'), {}, { club: 'driver' })
    expect(lesson.clubBefore).toBe('driver')
    expect(see(lesson, moved(ON), { club: 'driver' }).done).not.toContain('water')
  })

  it('does not tick Undo for a desk on which nothing was taken back', () => {
    expect(see(upTo('undo'), {}).done).not.toContain('undo')
  })

  it('ticks only the step shown, or the one after a ticked one', () => {
    const printed = see(upTo('aim'), {}, { hasPrinted: true })
    expect(printed.done).toEqual(['hole'])
    const ticked = see(upTo('aim'), { aimDegrees: 2 })
    const later = see(ticked, moved(ON), { club: 'driver' })
    expect([later.at, isDone(later, later.at)]).toEqual([2, true])
  })

  it('is the same lesson when nothing came of the look', () => {
    const lesson = upTo('club')
    expect(see(lesson, {})).toBe(lesson)
  })
})

describe('a kept lesson', () => {
  it('comes back as it was left, and anything else is a new one', () => {
    const kept = new Map<string, string>()
    const place = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
    }
    expect(keptLesson(place)).toEqual(NEW_LESSON)
    const lesson = turnLesson(upTo('club'), 1)
    keepLesson(lesson, place)
    expect(keptLesson(place)).toEqual(lesson)
    for (const text of ['{', '7', '{"at":"x","done":[]}', '{"at":1}']) {
      place.setItem('marram.lesson', text)
      expect(keptLesson(place)).toEqual(NEW_LESSON)
    }
    place.setItem('marram.lesson', '{"at":99,"done":["flown","aim"],"clubBefore":3}')
    expect(keptLesson(place)).toEqual({ at: LESSON_STEPS.length, done: ['aim'], clubBefore: null })
  })
})

describe('lessonWords', () => {
  it('asks in the reader’s units', () => {
    expect(lessonWords({ units: 'yards' }, true).water.ask).toContain('20 yards')
    expect(lessonWords({ units: 'metres' }, false).water.ask).toContain('20 metres')
  })
})
