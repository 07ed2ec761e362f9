import { Failure } from '#faults/failure.ts'
import { documentId } from '#outside/formats/document-id.ts'
import { parseTypedTable } from '#outside/formats/typed-hole-table.ts'
import { openDesk } from '../desk/desk.ts'
import { chooseCourse } from '../desk/edits.ts'
import { keepDesk, keepSteps, keptDesk, keptSteps } from '../desk/kept-desk.ts'
import { fetchKept, keepChanged, keepNewDocument, listDocuments } from '../documents/fetch-document.ts'
import { tabStorage } from '../documents/own-storage.ts'
import { openHole, type Survey, surveyOf } from './survey.ts'
import { courseDocument, TABLE_MEMBER } from './survey-reading.ts'

/**
 * Keeps a survey as a course of the store: a new one, or in place of the one it was opened from, and returns as what it
 * was kept. Throws a Failure when a row is wrong, when the store refuses it, and `MAR-STORE-004` when somebody changed the
 * course meanwhile.
 */
export async function keepCourse(survey: Survey): Promise<NonNullable<Survey['kept']>> {
  const document = courseDocument(survey)
  const { kept } = survey
  const id = kept?.id ?? (await keepNewDocument('courses', documentId(survey.name, 'course'), document))
  if (kept !== null) await keepChanged('courses', id, document, kept.revision)
  const { revision } = await fetchKept('courses', id)
  return { id, revision }
}

/** A course of the store that was typed here, to be typed on. Throws a Failure for one that has no table in it. */
export async function openCourse(id: string): Promise<Survey> {
  const { text, revision } = await fetchKept('courses', id)
  const document = JSON.parse(text) as Readonly<Record<string, unknown>>
  const table = document[TABLE_MEMBER]
  if (typeof table !== 'string')
    throw new Failure(
      'MAR-WEB-004',
      'This course was not typed here, so it has no table to go on with. Open its table from the disk, or begin a new course.',
      `courses/${id}`,
    )
  const { unit, holes } = parseTypedTable(table, `courses/${id}`)
  const { name } = document.marram as { readonly name: string }
  return surveyOf(name, unit, holes, { id, revision }, Date.now())
}

/** Leaves the desk as it was, but on the hole that is worked on. */
export async function turnDesk(survey: Survey, id: string): Promise<void> {
  const [courses, players] = await Promise.all([listDocuments('courses'), listDocuments('players')])
  const stored = { courses, players }
  const left = keptDesk(stored, tabStorage)
  const desk = left ?? openDesk(id, '', players[0]?.id ?? '')
  const { past } = keptSteps(stored, tabStorage)
  if (left !== null) keepSteps({ past: [...past, left], future: [] }, tabStorage)
  keepDesk(chooseCourse(desk, id, openHole(survey).ref.trim()), tabStorage)
}
