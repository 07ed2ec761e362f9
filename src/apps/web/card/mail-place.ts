import type { BookFacts } from '#paper/book/book-facts.ts'
import type { CardKind } from '#paper/book/card-kinds.ts'
import { cardText } from '#paper/book/card-text.ts'

/** The address that opens the reader's own mail program with the card as plain text (RFC 6068): lines end in CR LF, all else is percent-encoded. */
export function mailPlace(facts: BookFacts, kind: CardKind): string {
  const subject = `${facts.course}: the card of ${facts.playerName}`
  const body = cardText(facts, kind).replaceAll('\n', '\r\n')
  return `mailto:?subject=${encodeURIComponent(subject)}&body=${encodeURIComponent(body)}`
}
