import { adviceWords } from './advice.ts'
import type { BookFacts } from './book-facts.ts'
import { adviceOf } from './own-words.ts'
import type { BookHole } from './planned-hole.ts'
import type { RowWords } from './row-words.ts'

/**
 * The row of a junior's card: few words, and beside the number of the hole no figure but one, the junior's own par: the par
 * with the strokes received (from memory: juniors are commonly given one).
 */
export function juniorRow(one: BookHole, facts: BookFacts): RowWords {
  const { hole, received } = one
  const advice = adviceOf('junior', one, facts)
  return {
    underNumber: `your par ${hole.par + (received ?? 0)}`,
    facts: [],
    club: advice.club,
    words: adviceWords(advice),
  }
}
