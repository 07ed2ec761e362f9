import { clubWords } from '#golf/player/club-words.ts'
import { matchWords } from '#golf/rules/match-state.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import { metresToFeet } from '#numbers/units/units.ts'
import type { RoundMatch } from './match-of-rounds.ts'
import type { PlanNumbers } from './plan-numbers.ts'
import type { GamePart, StrokeSplit, Unsplit } from './recap.ts'
import type { RoundRecap, StrokeOfHole } from './recap-round.ts'
import type { Round } from './round.ts'
import type { CardAnswer } from './round-card.ts'
import { handicapText } from './score-words.ts'
import { MOST_TOLD_STROKES } from './settings.ts'

type Units = 'yards' | 'metres'

/** A round split, with what is told beside it. */
export interface ToldRecap {
  readonly round: Pick<Round, 'date'>
  /** Whether the conditions of the day were given. */
  readonly hasDay: boolean
  /** Whose numbers it is held against; `null` = those that are given now. */
  readonly against: Pick<PlanNumbers, 'from' | 'date'> | null
  readonly recap: RoundRecap
  readonly card: CardAnswer
  /** Against a second round; `null` = none was given. */
  readonly match: RoundMatch | null
}

const PARTS: Readonly<Record<GamePart, string>> = {
  tee: 'off the tee',
  approach: 'approach',
  around: 'around the green',
  putting: 'putting',
}

/** A part of the game in words. */
export function gamePartWords(part: GamePart): string {
  return PARTS[part]
}

/** `85 strokes on 18 holes`. */
export function scoreWords({ score, holes }: Pick<RoundRecap, 'score' | 'holes'>): string {
  return `${score} strokes on ${holes.length} ${holes.length === 1 ? 'hole' : 'holes'}`
}

/** What the plan stood on: a card of that day, what was kept when the round was written down, or a calm day where none is known. */
export function basisWords({ hasDay, against }: Pick<ToldRecap, 'hasDay' | 'against'>): string[] {
  if (against?.from === 'card')
    return [`Against the plan of the card of ${against.date}${hasDay ? '' : ', for a calm, normal day'}.`]
  if (against !== null)
    return [
      `No card with plans is known for this round: it is held against the numbers kept on ${against.date}${hasDay ? '' : ', for a calm, normal day'}.`,
    ]
  return hasDay ? [] : ['No day was given: this is against the plan for a calm, normal day.']
}

/** Net, points and what counts for the handicap; or why none of it is reckoned. */
export function cardLines({ card: answer, match }: Pick<ToldRecap, 'card' | 'match'>): string[] {
  const matched = match === null ? [] : [`As a match: ${matchWords(match)}, ${strokesWords(match)}.`]
  if ('missing' in answer) return [answer.missing, ...matched]
  const { playingHandicap, gross, net, points, adjustedGross, differentialTenths } = answer.card
  return [
    `Playing handicap ${handicapText(playingHandicap)}: ${gross === null ? 'not every ball was holed out' : `${gross} gross, ${net} net`}, ${points} points.`,
    `${adjustedGross} with no hole above net double bogey, a score differential of ${(differentialTenths / 10).toFixed(1)} before any adjustment for the day (Rules of Handicapping 2024). The club's own reckoning stands.`,
    ...matched,
  ]
}

function strokesWords({ received, isRated }: RoundMatch): string {
  if (!isRated) return 'nobody receiving strokes, since the course file does not rate the tees of both'
  if (received === 0) return 'no strokes received'
  const count = Math.abs(received)
  return `${count} ${count === 1 ? 'stroke' : 'strokes'} ${received > 0 ? 'received' : 'given'}`
}

/** The dearest choices, a line each, or that there are none. */
export function costlyLines({ costly }: Pick<RoundRecap, 'costly'>, units: Units): string[] {
  if (costly.length === 0)
    return ['None: every choice that can be judged was the plan’s, or too close to it to call.']
  const told = costly.slice(0, MOST_TOLD_STROKES)
  const rest = costly.length - told.length
  return [
    ...told.map((one) => costlyText(one, units)),
    ...(rest > 0 ? [`and ${rest} more that cost less`] : []),
  ]
}

/** The best strokes, a line each; none where none stood out. */
export function bestLines({ best }: Pick<RoundRecap, 'best'>, units: Units): string[] {
  return best.slice(0, MOST_TOLD_STROKES).map((one) => bestText(one, units))
}

/** `hole 7, stroke 1, driver from the tee: +0.18; the plan is the 5-wood`. */
function costlyText({ hole, stroke }: StrokeOfHole, units: Units): string {
  const { club, plan } = stroke
  const instead =
    plan === null || plan === club
      ? 'the plan is the same club on another line'
      : `the plan is the ${clubWords(plan)}`
  return `hole ${hole}, ${strokeText(stroke, units)}: ${costText(stroke.decision)}; ${instead}`
}

/** `hole 4, stroke 5, putter from the green, holed, 12 ft: −0.81, −0.45 of it luck`. */
function bestText({ hole, stroke }: StrokeOfHole, units: Units): string {
  const luck = stroke.unsplit.includes('luck') ? '' : `, ${costText(stroke.luck)} of it luck`
  const cost = stroke.decision >= 0.005 ? `; the choice itself cost ${stroke.decision.toFixed(2)}` : ''
  return `hole ${hole}, ${strokeText(stroke, units)}: ${costText(stroke.execution + stroke.luck)}${luck}${cost}`
}

function strokeText(stroke: StrokeSplit, units: Units): string {
  const { number, count, club, from, to } = stroke
  const which = count === 1 ? `stroke ${number}` : `strokes ${number} to ${number + count - 1}`
  const what = club === null ? 'a club not logged' : clubWords(club)
  const metres = Math.hypot(from.point[0], from.point[1])
  const place = from.lie === 'tee' && metres < 1 ? 'from the tee' : `from the ${lieWords(from.lie)}`
  return `${which}, ${what} ${place}${to === null ? ', holed' : ''}${puttLength(stroke, units)}`
}

function puttLength({ from, pinMetres }: StrokeSplit, units: Units): string {
  if (from.lie !== 'green') return ''
  return units === 'yards' ? `, ${Math.round(metresToFeet(pinMetres))} ft` : `, ${Math.round(pinMetres)} m`
}

function lieWords(lie: string): string {
  return lie.replace('-', ' ').replace('bunker', 'sand').replace('heavy', 'heavy grass')
}

const LACKING: Readonly<Record<Unsplit, (count: string) => string>> = {
  club: (count) =>
    `${count}: what was chosen is not logged or not in the player’s bag there, so the choice stays in how it was struck`,
  line: (count) => `${count}: the line is not logged, so the club is judged on its best line`,
  places: (count) => `${count}: where the ball lay in between is not logged, so these strokes are one`,
  luck: (count) =>
    `${count}: how the ball was struck cannot be told from the log, so luck stays in how it was struck`,
}

/** What the log lacks, with how many strokes lack it. */
export function unsplitLines({ unsplit }: Pick<RoundRecap, 'unsplit'>): string[] {
  return (Object.keys(LACKING) as Unsplit[]).flatMap((what) => {
    const count = unsplit[what]
    return count === 0 ? [] : [LACKING[what](`${count} ${count === 1 ? 'stroke' : 'strokes'}`)]
  })
}
