import { parseDay } from '#golf/course/parse-day.ts'
import type { CheckedDocument } from './document-check.ts'

/** Reads a document as the conditions of a day, named by its date. Throws the Failure of the reader. */
export function checkDay(text: string, where: string): CheckedDocument {
  return { name: parseDay(text, where).date ?? 'Any day', faults: [] }
}
