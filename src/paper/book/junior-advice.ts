import { capital } from '#golf/strategy/capital.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { sentenceLine } from '#golf/strategy/sentence-line.ts'
import type { Advice } from './advice.ts'
import type { BookHole } from './planned-hole.ts'
import { missWords, neverWords, roughStartWords } from './stroke-words.ts'

/** What the plan proposes for a junior: few words and no figure. */
export function proposedJunior({ hole, plan, missing }: BookHole): Advice {
  const [first, second] = plan?.options ?? []
  if (plan === null || first === undefined)
    return { club: '', stroke: missing === '' ? '' : `No plan: ${missing}`, next: '', never: '' }
  const { x_m: x, y_m: y, lie } = plan.situation
  const line = sentenceLine(hole, { x, y, lie })(first)
  const isEither = plan.verdict === 'too-close' && second !== undefined && second.club !== first.club
  const either = isEither ? `Or ${clubWords(second)}. ` : ''
  return {
    club: capital(clubWords(first)),
    stroke: `${either}${capital(roughStartWords(first, line))}; ${missWords(first, plan.avoid)}.`,
    next: '',
    never: neverWords(plan.avoid),
  }
}
