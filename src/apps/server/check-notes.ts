import { parsePracticeNotes } from '#golf/round/practice-notes.ts'
import type { CheckedDocument } from './document-check.ts'

/** Reads a document as the professional's notes on practice. Throws the Failure of the reader. */
export function checkNotes(text: string, where: string): CheckedDocument {
  parsePracticeNotes(text, where)
  return { name: 'Notes on practice', faults: [] }
}
