import { capital } from '#golf/strategy/capital.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { sentenceLine } from '#golf/strategy/sentence-line.ts'
import type { BookFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'
import type { RowWords } from './row-words.ts'
import { missWords, neverWords, roughStartWords } from './stroke-words.ts'

/**
 * The row of a junior's card: few words, and beside the number of the hole no figure but one, the junior's own par: the par
 * with the strokes received (from memory: juniors are commonly given one).
 */
export function juniorRow(one: BookHole, _facts: BookFacts): RowWords {
  const { hole, plan, missing, received } = one
  const underNumber = `your par ${hole.par + (received ?? 0)}`
  const [first, second] = plan?.options ?? []
  if (plan === null || first === undefined)
    return { underNumber, facts: [], club: '', words: `No plan: ${missing}` }
  const { x_m: x, y_m: y, lie } = plan.situation
  const line = sentenceLine(hole, { x, y, lie })(first)
  const either = plan.verdict === 'too-close' && second !== undefined && second.club !== first.club
  const sentences = [
    either ? `Or ${clubWords(second)}.` : '',
    `${capital(roughStartWords(first, line))}; ${missWords(first, plan.avoid)}.`,
    neverWords(plan.avoid),
  ]
  return {
    underNumber,
    facts: [],
    club: capital(clubWords(first)),
    words: sentences.filter((words) => words !== '').join(' '),
  }
}
