import { parsePrintedCard } from '#golf/round/printed-card.ts'
import type { CheckedDocument } from './document-check.ts'

/** Reads a document as a card that was made (`card/1`). Throws the Failure of the reader. */
export function checkCard(text: string, where: string): CheckedDocument {
  const { card } = parsePrintedCard(text, where)
  return { name: `${card.date}, ${card.player}, ${card.course}`, faults: [] }
}
