import type { BookFacts } from './book-facts.ts'
import type { CardKind } from './card-kinds.ts'
import { cautionsOfBook } from './cautions-of-book.ts'
import { dayWords } from './day-words.ts'

/** A card as lines of plain text, for a letter: what stands on it, hole by hole, then the day and what to mind. */
export function cardText(facts: BookFacts, { rowOf, hasFigures }: CardKind): string {
  const rows = facts.holes.map((one) => {
    const { underNumber, facts: about, club, words } = rowOf(one, facts)
    const head = [`${one.hole.ref}`, underNumber, ...about].filter((part) => part !== '').join(', ')
    return [head, [club, words].filter((part) => part !== '').join(': ')].join('\n')
  })
  const day = hasFigures ? [dayWords(facts.day, facts.ruler)] : []
  return [`${facts.course}: ${facts.playerName}`, ...day, ...rows, ...cautionsOfBook(facts)].join('\n\n')
}
