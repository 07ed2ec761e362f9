import { type ReactElement, useEffect, useRef, useState } from 'react'
import '../style/lesson.css'
import type { Desk, Reader } from '../desk/desk.ts'
import { ownStorage } from '../documents/own-storage.ts'
import type { Library } from '../documents/use-library.ts'
import { NEW_PLAYER, SURVEY } from '../page/places.ts'
import { keepLesson, keptLesson } from './kept-lesson.ts'
import { isDone, LESSON_STEPS, type Lesson, lessonAfter, NEW_LESSON, turnLesson } from './lesson.ts'
import { LESSON_END, lessonWords } from './lesson-words.ts'
import { SAMPLE } from './sample.ts'

/** The first lesson: one step at a time along the foot of the desk, which stays free; each ticks itself off. */
export function LessonStrip(props: {
  readonly library: Library
  readonly desk: Desk
  /** The club of the plan of what is on the desk; `null` while it is reckoned. */
  readonly club: string | null
  readonly canRedo: boolean
  readonly reader: Reader
  /** True when it was asked for just now, and not left open from before. */
  readonly takesFocus: boolean
  /** Lays the hole of the lesson on the desk. */
  readonly onSample: (sample: typeof SAMPLE) => void
  readonly onPutAway: () => void
}): ReactElement {
  const { library, reader } = props
  const hasSample = isIn(library.courses, SAMPLE.courseId) && isIn(library.players, SAMPLE.playerId)
  const isSample = !hasSample || isSampleOn(props.desk)
  const [lesson, turn] = useLesson({ ...props, isSample })
  const title = useRef<HTMLHeadingElement>(null)
  const { takesFocus } = props
  useEffect(() => {
    if (takesFocus) title.current?.focus({ preventScroll: true })
  }, [takesFocus])
  const words = lessonWords(reader, hasSample)
  const step = LESSON_STEPS[lesson.at]
  const isTicked = isDone(lesson, lesson.at)
  return (
    <aside className="lesson" aria-labelledby="lesson-title">
      <div className="lesson-head">
        <h2 id="lesson-title" ref={title} tabIndex={-1}>
          First lesson
        </h2>
        <ol className="lesson-steps">
          {LESSON_STEPS.map((each, index) => (
            <li
              key={each}
              className={isDone(lesson, index) ? 'done' : undefined}
              aria-current={index === lesson.at ? 'step' : undefined}
            >
              {words[each].name}
              <span className="unseen">{isDone(lesson, index) ? ', done' : ', to do'}</span>
            </li>
          ))}
        </ol>
      </div>
      <div className="lesson-words" aria-live="polite">
        {step === undefined ? (
          <p>{LESSON_END}</p>
        ) : (
          <>
            <p>{isTicked ? words[step].shown : words[step].ask}</p>
            {!isTicked && <p className="lesson-keys">{words[step].byKeys}</p>}
          </>
        )}
      </div>
      <div className="lesson-buttons">
        {step === 'hole' && !isSample && (
          <button type="button" onClick={() => props.onSample(SAMPLE)}>
            Lay it out
          </button>
        )}
        {step === undefined ? (
          <>
            <a className="button" href={NEW_PLAYER}>
              New player
            </a>
            <a className="button" href={SURVEY}>
              Survey a hole
            </a>
            <button type="button" onClick={() => turn(() => NEW_LESSON)}>
              From the beginning
            </button>
          </>
        ) : (
          <>
            <button
              type="button"
              disabled={lesson.at === 0}
              onClick={() => turn((now) => turnLesson(now, -1))}
            >
              Step before
            </button>
            <button type="button" onClick={() => turn((now) => turnLesson(now, 1))}>
              {isTicked ? 'Next step' : 'Pass over'}
            </button>
          </>
        )}
        <button type="button" onClick={props.onPutAway}>
          Put away
        </button>
      </div>
    </aside>
  )
}

/** The lesson as it was left, ticked by what happens on the desk and kept, and how to turn to another step. */
function useLesson({
  desk,
  club,
  canRedo,
  isSample,
}: {
  readonly desk: Desk
  readonly club: string | null
  readonly canRedo: boolean
  readonly isSample: boolean
}): readonly [Lesson, (change: (lesson: Lesson) => Lesson) => void] {
  const [lesson, setLesson] = useState(() => keptLesson(ownStorage))
  useEffect(() => {
    const seen = { desk, club, canRedo, isSample }
    setLesson((before) => lessonAfter(before, { ...seen, hasPrinted: false }))
    const onPrint = (): void => setLesson((before) => lessonAfter(before, { ...seen, hasPrinted: true }))
    addEventListener('beforeprint', onPrint)
    return () => removeEventListener('beforeprint', onPrint)
  }, [desk, club, canRedo, isSample])
  useEffect(() => keepLesson(lesson, ownStorage), [lesson])
  return [lesson, setLesson]
}

function isIn(listed: readonly { readonly id: string }[], id: string): boolean {
  return listed.some((each) => each.id === id)
}

function isSampleOn(desk: Desk): boolean {
  const { courseId, holeRef, playerId } = SAMPLE
  return desk.courseId === courseId && desk.holeRef === holeRef && desk.playerId === playerId
}
