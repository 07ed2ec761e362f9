import { capital } from '#golf/strategy/capital.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { sentenceLine } from '#golf/strategy/sentence-line.ts'
import type { BookFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'
import { missWords, neverWords, startWords, thenWords } from './stroke-words.ts'

/** The stroke from the tee in a word and what belongs to it in sentences. */
export interface Advice {
  readonly club: string
  readonly words: string
}

/** What a page says of a hole: the club, then start line, safe side, next shot and what never to do. */
export function adviceOf({ hole, plan, missing }: BookHole, { purpose, ruler }: BookFacts): Advice {
  const [first, second] = plan?.options ?? []
  if (plan === null || first === undefined) return { club: '', words: `No plan: ${missing}` }
  const { x_m: x, y_m: y, lie } = plan.situation
  const line = sentenceLine(hole, { x, y, lie })(first)
  const trust =
    plan.verdict === 'too-close' && second !== undefined && second.club !== first.club
      ? `or ${clubWords(second)}, as you trust: `
      : ''
  const sentences = [
    `${trust}${startWords(first, line, ruler)}; ${missWords(first, plan.avoid)}.`,
    thenWords(plan.then, purpose, ruler),
    neverWords(plan.avoid),
  ]
  return { club: capital(clubWords(first)), words: sentences.filter((words) => words !== '').join(' ') }
}
