import { capital } from '#golf/strategy/capital.ts'
import { isDearToBothSides, safeSide } from '#golf/strategy/misses.ts'
import type { NextShot, Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords, type SentenceLine } from '#golf/strategy/plan-sentence.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Ruler } from '../draw/ruler.ts'

/** What the page is for: in a counting round it holds nothing that may not be used there. */
export type Purpose = 'practice' | 'counting'

/** Where to start the ball and where it finishes: `start 4 right of the pin, finish on it`. */
export function startWords(option: PlanOption, line: SentenceLine, ruler: Ruler): string {
  if (option.trees.way === 'sideways')
    return `sideways to the ${offsetOf(option, option.aim.heading_deg, line) < 0 ? 'left' : 'right'}`
  const mark = line.words === 'pin' ? 'pin' : 'line'
  const start = sideWords(offsetOf(option, option.aim.start_deg, line), ruler)
  const finish = sideWords(offsetOf(option, option.aim.heading_deg, line), ruler)
  const place = start === null ? `${mark === 'pin' ? 'at' : 'on'} the ${mark}` : `${start} of the ${mark}`
  return start === finish ? `start ${place}` : `start ${place}, finish ${finish ?? 'on it'}`
}

/** Where to start the ball without a figure: `start a little right of the pin`. */
export function roughStartWords(option: PlanOption, line: SentenceLine): string {
  if (option.trees.way === 'sideways')
    return `sideways to the ${offsetOf(option, option.aim.heading_deg, line) < 0 ? 'left' : 'right'}`
  const mark = line.words === 'pin' ? 'pin' : 'line'
  const offset = offsetOf(option, option.aim.start_deg, line)
  if (Math.abs(offset) < ON_IT_METRES) return `start ${mark === 'pin' ? 'at' : 'on'} the ${mark}`
  const much = Math.abs(offset) < LITTLE_METRES ? 'a little' : 'well'
  return `start ${much} ${offset < 0 ? 'left' : 'right'} of the ${mark}`
}

/** Off the line by less than this a ball starts on it, and by less than that a little beside it, metres. Our assumption. */
const ON_IT_METRES = 2
const LITTLE_METRES = 10

/** On which side to miss: `miss right`; the side of the hazard that matters most is never called safe. */
export function missWords(option: PlanOption, avoid: Plan['avoid']): string {
  const side = safeSide(option)
  if (side !== null && side !== avoid?.side) return `miss ${side}`
  if (isDearToBothSides(option)) return 'both sides are dear'
  if (avoid !== null && avoid.side !== 'across') return `keep off the ${avoid.side}`
  return 'no side is safer'
}

/** One thing not to do: `Never left: water.`; empty when no hazard is worth a word. */
export function neverWords(avoid: Plan['avoid']): string {
  if (avoid === null) return ''
  return avoid.side === 'across' ? `Never into the ${avoid.what}.` : `Never ${avoid.side}: ${avoid.what}.`
}

/**
 * What to play next, from the likeliest lie first: `Then 152 to the back: 7-iron; rough: 6-iron.` What a number plays after height
 * and wind is left out of what is carried in a counting round (Rule 4.3a(1)).
 */
export function thenWords(shots: readonly NextShot[], purpose: Purpose, ruler: Ruler): string {
  const [first, second] = shots
  if (first === undefined) return ''
  const other =
    second === undefined || strokeOf(second) === strokeOf(first)
      ? ''
      : `; ${lieWords(second)}: ${strokeOf(second)}`
  return `${capital(nextWords(first, purpose, ruler))}${other}.`
}

function nextWords(next: NextShot, purpose: Purpose, ruler: Ruler): string {
  if (next.number === 'layup' || next.distance_m === null) return `then lay up: ${clubWords(next)}`
  const [figure, plays] = [ruler.figure(next.distance_m), ruler.figure(next.plays_m ?? next.distance_m)]
  const playing = purpose === 'counting' || plays === figure ? '' : `, plays ${plays}`
  return `then ${figure} to the ${next.number}${playing}: ${clubWords(next)}`
}

function strokeOf(next: NextShot): string {
  return next.number === 'layup' ? `${clubWords(next)}, laying up` : clubWords(next)
}

function lieWords({ lie }: NextShot): string {
  return lie === 'heavy' ? 'heavy grass' : lie === 'bunker' ? 'sand' : lie.replace('-', ' ')
}

function offsetOf(option: PlanOption, degrees: number, line: SentenceLine): number {
  return option.total_m * Math.sin(degreesToRadians(degrees - line.headingDegrees))
}

/** `4 right`, advice over ten to the nearest 5; `null` when it rounds to nothing. */
function sideWords(metres: number, ruler: Ruler): string | null {
  const length = Math.abs(metres) / ruler.metres
  const rounded = length < 10 ? Math.round(length) : 5 * Math.round(length / 5)
  return rounded === 0 ? null : `${rounded} ${metres < 0 ? 'left' : 'right'}`
}
