import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { clubWords as clubName } from '#golf/player/club-words.ts'
import type { OwnCarries } from '#golf/player/own-carries.ts'
import { worthWords } from '#golf/strategy/format-words.ts'
import type { NextShot, Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import {
  METRES_PER_SECOND_PER_KNOT,
  METRES_PER_SECOND_PER_MPH,
  METRES_PER_YARD,
} from '#numbers/units/units.ts'
import type { Reader } from './desk/desk.ts'

/** What the desk says, in the trade's words and the reader's units; figures are rounded here and only here. */

/** Metres in one of the reader's units. */
export function readerMetres(reader: Pick<Reader, 'units'>): number {
  return reader.units === 'yards' ? METRES_PER_YARD : 1
}

/** The short sign of the reader's units. */
export function unitSign(reader: Reader): 'yd' | 'm' {
  return reader.units === 'yards' ? 'yd' : 'm'
}

/** A length as a whole figure. */
export function figure(metres: number, reader: Reader): string {
  const value = Math.round(metres / readerMetres(reader))
  return (value === 0 ? 0 : value).toString()
}

/** A length with its sign: `178 yd`. */
export function length(metres: number, reader: Reader): string {
  return `${figure(metres, reader)} ${unitSign(reader)}`
}

/** A sideways distance: `4 yd left`, or `on the line`. */
export function sideways(metres: number, reader: Reader): string {
  const whole = figure(Math.abs(metres), reader)
  return whole === '0' ? 'on the line' : `${whole} ${unitSign(reader)} ${metres < 0 ? 'left' : 'right'}`
}

const WIND_METRES: Readonly<Record<Reader['windUnit'], number>> = {
  'm/s': 1,
  mph: METRES_PER_SECOND_PER_MPH,
  knots: METRES_PER_SECOND_PER_KNOT,
}

/** A wind speed: `5 m/s`, `calm`. */
export function windSpeed(metresPerSecond: number, reader: Reader): string {
  if (metresPerSecond < 0.05) return 'calm'
  return `${Math.round(metresPerSecond / WIND_METRES[reader.windUnit])} ${reader.windUnit}`
}

const POINTS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const
const SIDES = [
  'into',
  'into, from the right',
  'from the right',
  'behind, from the right',
  'behind',
  'behind, from the left',
  'from the left',
  'into, from the left',
] as const

/** A bearing as a point of the compass. */
export function compassPoint(degrees: number): string {
  return POINTS[Math.round(degrees / 45) % 8] ?? 'north'
}

/** How the wind blows on a hole that runs along a bearing: `into, from the left`. */
export function windOnHole(fromDegrees: number, bearingDegrees: number): string {
  const turn = (((fromDegrees - bearingDegrees) % 360) + 360) % 360
  return SIDES[Math.round(turn / 45) % 8] ?? 'into'
}

/** Firmness in a word. */
export function firmnessWord(firmness: number): string {
  if (firmness < 0.65) return 'soft'
  if (firmness < 0.9) return 'a little soft'
  if (firmness <= 1.1) return 'normal'
  if (firmness <= 1.4) return 'a little firm'
  return 'firm'
}

/** How wide the player's shots are taken to spread, in words. */
export function spreadWord(factor: number): string {
  return Math.abs(factor - 1) < 0.01 ? 'as it is' : `${factor.toFixed(1)} times as wide`
}

/** What the plan was before the last edit, with what that club costs now. */
export function turnWords(plan: Plan, before: string): string {
  const option = plan.options.find(({ club }) => club === before)
  if (option === undefined) return `Before it was the ${before}.`
  return `Before it was the ${clubWords(option)}, which now costs ${priceWords(plan, option.cost)} more.`
}

/** The verdict as a sentence; never more certain than the plan is. */
export function verdict(plan: Plan): string {
  const [first, second] = plan.options
  if (first === undefined) return 'No club plays from here.'
  if (second === undefined) return 'There is no other club to weigh it against.'
  // Without draws of the player nothing is known of the doubt, so nothing is called clear.
  if (plan.method.draws === 0)
    return `The next best, the ${clubWords(second)}, costs ${priceWords(plan, second.cost)} more.`
  switch (plan.verdict) {
    case 'too-close':
      return `The ${clubWords(second)} costs ${priceWords(plan, second.cost)} more: less than can be told apart.`
    case 'close':
      return `Close: the ${clubWords(second)} costs ${priceWords(plan, second.cost)} more.`
    case 'clear':
      return `Clear: the next best, the ${clubWords(second)}, costs ${priceWords(plan, second.cost)} more.`
  }
}

/** What is paid in the unit that a plan counts in: `0.12` of a stroke, `5 in 100`, `0.04 points`. */
export function priceWords({ situation, format }: Pick<Plan, 'situation' | 'format'>, price: number): string {
  const name = situation.objective
  return name === 'strokes' || format === null
    ? cost(price)
    : worthWords({ name, aim: format.aim }, Math.max(0, price))
}

/** The unit of the clubs' costs, over a table. */
export function costHeading({ situation, format }: Pick<Plan, 'situation' | 'format'>): string {
  if (format === null || situation.objective === 'strokes') return 'cost in strokes'
  if (situation.objective === 'points') return 'cost in points'
  return situation.objective === 'match' ? `cost in ${format.aim}` : 'cost in chance'
}

/** Strokes as they stand in tables. */
export function cost(strokes: number): string {
  return Math.max(0, strokes).toFixed(2)
}

/** Strokes as they stand in sentences, to the nearest twentieth. */
export function strokes(value: number): string {
  return (Math.round(value * 20) / 20).toFixed(2)
}

const GROUNDS: readonly (readonly [keyof PlanOption['outcomes'], string])[] = [
  ['green', 'green'],
  ['fringe', 'apron'],
  ['fairway', 'fairway'],
  ['first-cut', 'first cut'],
  ['tee', 'tee'],
  ['path', 'path'],
  ['rough', 'rough'],
  ['heavy', 'heavy'],
  ['bunker', 'sand'],
  ['trees', 'trees'],
  ['scrub', 'scrub'],
  ['penalty', 'penalty area'],
  ['out', 'out of bounds'],
]

/** Where the shots finish, in per cent, best ground first; grounds under half a per cent are left out. */
export function outcomeShares(
  outcomes: Readonly<Partial<Record<string, number>>>,
): readonly { readonly ground: string; readonly share: string }[] {
  return GROUNDS.flatMap(([ground, word]) => {
    const share = outcomes[ground] ?? 0
    return share < 0.005 ? [] : [{ ground: word, share: `${Math.round(share * 100)} %` }]
  })
}

/** Ground of a hole in the trade's words. */
export function groundWord(ground: Ground): string {
  const known = GROUNDS.find(([name]) => name === ground)
  return known?.[1] ?? 'penalty area'
}

/** Where the next shot is played from: `309 yd left to the pin, from the fairway`. */
export function shotLeft(shot: NextShot, hole: Hole, reader: Reader): string {
  const left = Math.hypot(hole.pin[0] - shot.from.x_m, hole.pin[1] - shot.from.y_m)
  return `${length(left, reader)} left to the pin, from the ${lieWord(shot.lie)}`
}

/** The next shot as a phrase: `5-hybrid to the back number`. */
export function nextShot(shot: NextShot): string {
  return shot.number === 'layup'
    ? `${clubWords(shot)}, a layup`
    : `${clubWords(shot)} to the ${shot.number} number`
}

/** A lie in the trade's words. */
export function lieWord(lie: NextShot['lie']): string {
  return (
    { 'first-cut': 'first cut', heavy: 'heavy grass', bunker: 'sand', fringe: 'apron' }[lie as string] ?? lie
  )
}

/** Which carries were typed, longest first: `Own carries: driver 205 yd, 7-iron 138 yd; the other clubs are guessed from these.` */
export function ownCarriesWords(carries: OwnCarries, reader: Reader): string {
  const typed = Object.entries(carries)
    .toSorted(([, one], [, other]) => other - one)
    .map(([club, metres]) => `${clubName(club)} ${length(metres, reader)}`)
  return unbroken(`Own carries: ${typed.join(', ')}; the other clubs are guessed from these.`)
}

/** A date as 25 Nov. */
export function shortDate(iso: string): string {
  const [, month, day] = iso.split('-').map(Number)
  const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ')
  return `${day ?? ''} ${months[(month ?? 1) - 1] ?? ''}`
}

/** Words with the hyphen of a club kept on one line: `7‑iron`. */
export function unbroken(words: string): string {
  return words.replaceAll(/(\d)-(?=[a-z])/g, '$1\u2011')
}

/** Chances of each score, in per cent, those under half a per cent left out. */
export function scoreShares(
  scores: Readonly<Record<string, number>>,
): readonly { readonly score: string; readonly share: string }[] {
  return Object.entries(scores)
    .toSorted(([a], [b]) => Number(a) - Number(b))
    .flatMap(([score, chance]) => (chance < 0.005 ? [] : [{ score, share: `${Math.round(chance * 100)} %` }]))
}
