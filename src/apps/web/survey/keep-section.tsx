import { type ReactElement, useEffect, useState } from 'react'
import { listDocuments } from '../documents/fetch-document.ts'
import type { Listed } from '../documents/server-documents.ts'
import { troubleOf } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { DESK } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import type { Trouble } from '../planning/questions.ts'
import { keepCourse, openCourse, turnDesk } from './keep-survey.ts'
import type { Survey } from './survey.ts'

/** The survey to the store, and the desk opened on it; a course that was typed here back from the store. */
export function KeepSection(props: {
  readonly survey: Survey
  readonly onKept: (kept: NonNullable<Survey['kept']>) => void
  readonly onOpen: (survey: Survey) => void
  readonly onNew: () => void
}): ReactElement {
  const { survey, onKept, onOpen } = props
  const [courses, setCourses] = useState<readonly Listed[]>([])
  const [chosen, setChosen] = useState('')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [isBusy, setBusy] = useState(false)
  useEffect(() => {
    listDocuments('courses')
      .then(setCourses)
      .catch(() => setCourses([]))
  }, [])
  const work = (what: () => Promise<void>): void => {
    setBusy(true)
    setTrouble(null)
    what()
      .catch((error: unknown) => setTrouble(troubleOf(error)))
      .finally(() => setBusy(false))
  }
  const keep = async (): Promise<void> => {
    if (survey.name.trim() === '')
      return setTrouble({ code: '', message: 'The course has no name yet. Type one above.', where: '' })
    const kept = await keepCourse(survey)
    onKept(kept)
    await turnDesk(survey, kept.id)
    location.hash = DESK
  }
  return (
    <>
      {trouble !== null && <TroubleNote trouble={trouble} />}
      <div className="made-buttons">
        <button type="button" className="question-done" disabled={isBusy} onClick={() => work(keep)}>
          Keep, and open the desk
        </button>
        <button
          type="button"
          onClick={() => {
            setTrouble(null)
            props.onNew()
          }}
        >
          Begin a new course
        </button>
      </div>
      {courses.length > 0 && (
        <div className="made-buttons">
          <Choice
            label="A course of the store"
            value={chosen}
            options={[{ value: '', name: 'choose' }, ...courses.map(({ id, name }) => ({ value: id, name }))]}
            onChange={setChosen}
          />
          <button
            type="button"
            disabled={isBusy || chosen === ''}
            onClick={() => work(async () => onOpen(await openCourse(chosen)))}
          >
            Go on with it
          </button>
        </div>
      )}
      <p>
        {survey.kept === null
          ? 'It will be a new course of the store.'
          : `It changes the course ${survey.kept.id} of the store.`}
      </p>
    </>
  )
}
