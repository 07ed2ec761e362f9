import type { SentenceReader } from '#golf/player/own-sentence.ts'
import type { BookFacts } from './book-facts.ts'
import { bookPages } from './book-pages.ts'
import { CARD_KINDS } from './card-kinds.ts'
import { cardPages } from './card-pages.ts'
import type { Page } from './page.ts'

/** What can be printed of a round. */
export const PRINTED_KINDS = ['card', 'large', 'junior', 'caddie', 'book', 'pins'] as const
export type PrintedKind = (typeof PRINTED_KINDS)[number]

/** Whether plans stand on it; of what has none nothing is worked out. */
export function hasPlans(kind: PrintedKind): boolean {
  return kind === 'book' || (kind !== 'pins' && CARD_KINDS[kind].hasPlans)
}

/** Whose sentences stand on it; `null` = none do. */
export function readerOf(kind: PrintedKind): SentenceReader | null {
  return kind === 'book' ? 'player' : kind === 'pins' ? null : CARD_KINDS[kind].reader
}

/** Whether it is words alone. */
export function isWords(kind: PrintedKind): boolean {
  return kind !== 'book' && kind !== 'pins'
}

/** Lays out the pages of one player. Greens of a book stand at 1 to `greenScale`, or smaller where they do not fit. */
export function printedPages(
  kind: Exclude<PrintedKind, 'pins'>,
  facts: BookFacts,
  greenScale: number,
): Page[] {
  return kind === 'book' ? bookPages(facts, greenScale) : cardPages(facts, CARD_KINDS[kind])
}
