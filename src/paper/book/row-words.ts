import type { BookFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'

/** What the row of a hole says on a card. Empty words are left out. */
export interface RowWords {
  /** Under the number of the hole. */
  readonly underNumber: string
  /** One line each, beside the number. */
  readonly facts: readonly string[]
  /** Large and bold, before the words. */
  readonly club: string
  readonly words: string
}

/** Finds the words for a hole: one for each kind of reader. */
export type RowWriter = (one: BookHole, facts: BookFacts) => RowWords
