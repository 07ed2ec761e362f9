import type { Hole } from '#golf/course/hole.ts'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import type { SentenceLine } from '#golf/strategy/plan-sentence.ts'
import { sentenceLine } from '#golf/strategy/sentence-line.ts'
import type { Reader } from './desk/desk.ts'
import { finishOffset } from './desk/finish-offset.ts'
import { length, sideways } from './words.ts'

/** What each club of a plan is aimed by, the same as in the plan's sentence. */
export type LineOf = (option: Pick<PlanOption, 'total_m'>) => SentenceLine

/** Where the ball lies, as a plan says it. */
type Place = Pick<Plan['situation'], 'x_m' | 'y_m' | 'lie'>

/** What clubs are aimed by from a place of a hole. */
export function linesOf({ x_m: x, y_m: y, lie }: Place, hole: Hole): LineOf {
  return sentenceLine(hole, { x, y, lie })
}

/** How far sideways a club finishes, against what it is aimed by: `12 yd right`, `4 yd left of the pin`. */
export function sideWords(
  option: Pick<PlanOption, 'aim' | 'total_m'>,
  headingDegrees: number,
  line: SentenceLine,
  reader: Reader,
): string {
  const offset = finishOffset(option, headingDegrees - line.headingDegrees)
  const side = sideways(offset, reader)
  if (line.words !== 'pin') return side
  return side === sideways(0, reader) ? 'at the pin' : `${side} of the pin`
}

/** The same with how far on: `12 yd right at 220 yd`, `4 yd left of the pin, 146 yd on`. */
export function aimWords(
  option: Pick<PlanOption, 'aim' | 'total_m'>,
  headingDegrees: number,
  line: SentenceLine,
  reader: Reader,
): string {
  const side = sideWords(option, headingDegrees, line, reader)
  const on = length(option.total_m, reader)
  return line.words === 'pin' ? `${side}, ${on} on` : `${side} at ${on}`
}
