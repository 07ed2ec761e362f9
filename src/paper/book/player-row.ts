import { adviceWords } from './advice.ts'
import type { BookFacts } from './book-facts.ts'
import { adviceOf } from './own-words.ts'
import type { BookHole } from './planned-hole.ts'
import type { RowWords } from './row-words.ts'

/** The row of a player's own card: length and strokes received, the stroke from the tee, what comes next, one never. */
export function playerRow(one: BookHole, facts: BookFacts): RowWords {
  const advice = adviceOf('player', one, facts)
  return { ...holeFacts(one, facts), club: advice.club, words: adviceWords(advice) }
}

/** Par, length, stroke index and strokes received. */
export function holeFacts(
  { hole, received }: BookHole,
  { ruler }: BookFacts,
): Pick<RowWords, 'underNumber' | 'facts'> {
  return {
    underNumber: `par ${hole.par}`,
    facts: [
      `${ruler.figure(hole.lengthMetres)} ${ruler.sign}`,
      hole.strokeIndex === null ? '' : `index ${hole.strokeIndex}`,
      received === null ? '' : receivedWords(received),
    ],
  }
}

function receivedWords(strokes: number): string {
  if (strokes === 0) return ''
  return strokes > 0 ? `gets ${strokes}` : `gives ${-strokes}`
}
