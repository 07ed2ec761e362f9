import { PRACTICE_PARTS, type PracticePart } from '#golf/round/improved-player.ts'
import {
  encodePracticeNotes,
  NO_PRACTICE_NOTES,
  type PracticeNotes,
  parsePracticeNotes,
} from '#golf/round/practice-notes.ts'
import { fetchKept, keepChanged, keepNewDocument, listDocuments } from '../documents/fetch-document.ts'
import type { KeptDocument } from '../documents/server-documents.ts'

/** The one document of the professional's notes on practice: they are the same for every player. */
const ID = 'practice'

/** The notes as they are kept, ours where there are none yet. Throws a Failure with the server's code. */
export async function loadNotes(): Promise<PracticeNotes> {
  const kept = await keptNotes()
  return kept === null ? NO_PRACTICE_NOTES : parsePracticeNotes(kept.text, `notes/${ID}`)
}

/**
 * Keeps in the store what was changed of the notes, and leaves all else as it is there now; while the server is away they
 * wait in this browser. Throws a Failure with the server's code.
 */
export async function keepNotes(before: PracticeNotes, now: PracticeNotes): Promise<void> {
  const kept = await keptNotes()
  if (kept === null) {
    await keepNewDocument('notes', ID, encodePracticeNotes(now))
    return
  }
  const there = parsePracticeNotes(kept.text, `notes/${ID}`)
  const text = encodePracticeNotes({
    rates: { ...there.rates, ...changed(before.rates, now.rates) },
    drills: { ...there.drills, ...changed(before.drills, now.drills) },
  })
  if (text !== kept.text) await keepChanged('notes', ID, text, kept.revision)
}

/** The parts that are not as before. */
function changed<Value>(
  before: Readonly<Partial<Record<PracticePart, Value>>>,
  now: Readonly<Partial<Record<PracticePart, Value>>>,
): Partial<Record<PracticePart, Value>> {
  return Object.fromEntries(
    PRACTICE_PARTS.filter((part) => now[part] !== before[part]).map((part) => [part, now[part]]),
  )
}

async function keptNotes(): Promise<KeptDocument | null> {
  const listed = await listDocuments('notes')
  return listed.some(({ id }) => id === ID) ? fetchKept('notes', ID) : null
}
