import { parsePlayer } from '#golf/player/parse-player.ts'
import type { CheckedDocument } from './document-check.ts'

/** Reads a document as a player file. Throws the Failure of the reader. */
export function checkPlayer(text: string, where: string): CheckedDocument {
  return { name: parsePlayer(text, where).name, faults: [] }
}
