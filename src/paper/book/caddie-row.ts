import { measureHole } from '#golf/course/measure-hole.ts'
import type { BookFacts } from './book-facts.ts'
import { greenNumbers, reachAndCarry } from './hole-numbers.ts'
import { carriedHole } from './hole-page.ts'
import type { BookHole } from './planned-hole.ts'
import { holeFacts } from './player-row.ts'
import type { RowWords } from './row-words.ts'

/** The row for a caddie who wants numbers and no advice: what to reach and carry from the tees used, and the green. */
export function caddieRow(one: BookHole, facts: BookFacts): RowWords {
  const { ruler, purpose } = facts
  const measures = measureHole(carriedHole(one.hole, purpose))
  const numbers = reachAndCarry(measures, ruler)
  const { pinch } = measures
  const sentences = [
    numbers.length === 0 ? '' : `To reach–carry: ${numbers.join('; ')}.`,
    pinch === null
      ? ''
      : `Narrowest at ${ruler.figure(pinch.atMetres)}: ${ruler.figure(pinch.widthMetres)} wide.`,
    greenNumbers(measures, ruler),
  ]
  return { ...holeFacts(one, facts), club: '', words: sentences.filter((words) => words !== '').join(' ') }
}
