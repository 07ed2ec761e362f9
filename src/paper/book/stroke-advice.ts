import { capital } from '#golf/strategy/capital.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { sentenceLine } from '#golf/strategy/sentence-line.ts'
import { SHORT_GAME_METRES } from '#golf/strategy/settings.ts'
import type { Advice } from './advice.ts'
import type { BookFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'
import { missWords, neverWords, startWords, thenWords } from './stroke-words.ts'

/** What the plan proposes for a hole; a hole that was not planned yet says nothing. */
export function proposedAdvice({ hole, plan, missing }: BookHole, { purpose, ruler }: BookFacts): Advice {
  const [first, second] = plan?.options ?? []
  if (plan === null || first === undefined)
    return { club: '', stroke: missing === '' ? '' : `No plan: ${missing}`, next: '', never: '' }
  const { x_m: x, y_m: y, lie } = plan.situation
  const line = sentenceLine(hole, { x, y, lie })(first)
  const trust =
    plan.verdict === 'too-close' && second !== undefined && second.club !== first.club
      ? `or ${clubWords(second)}, as you trust: `
      : ''
  return {
    club: capital(clubWords(first)),
    stroke: `${trust}${startWords(first, line, ruler)}; ${missWords(first, plan.avoid)}.`,
    // Where most balls come to rest about the green, another full stroke is a duffed ball's.
    next: first.leave_m.p50 < SHORT_GAME_METRES ? '' : thenWords(plan.then, purpose, ruler),
    never: neverWords(plan.avoid),
  }
}
