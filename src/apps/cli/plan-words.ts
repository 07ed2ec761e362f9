import type { Flip, NextShot, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords, type SentenceLine } from '#golf/strategy/plan-sentence.ts'
import { sentenceLine } from '#golf/strategy/sentence-line.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { PlannedHole } from './plan-one.ts'
import { SMALLEST_PRINTED_SHARE } from './settings.ts'
import { lengthNumber, lengthText, type ReaderUnits, sideText, windText } from './units-of-the-reader.ts'

/** A share 0–1 for a table: `–` when none is left, `<1` under one in a hundred, else per cent without the sign. */
export function shareText(share: number): string {
  if (share < SMALLEST_PRINTED_SHARE) return '–'
  return share < 0.01 ? '<1' : String(Math.round(share * 100))
}

/**
 * Where a club aims, against what can be seen from the ball: `12 left at 196 yd` of the hole line or its first leg,
 * `12 left of the pin, 196 yd on` where the pin is what is aimed by.
 */
export function aimText(option: PlanOption, line: SentenceLine, units: ReaderUnits): string {
  const { heading_deg: heading } = option.aim
  const at = option.total_m
  const side = sideText(at * Math.sin(degreesToRadians(heading - line.headingDegrees)), units)
  if (line.words !== 'pin') return `${side} at ${lengthText(at, units)}`
  return `${side === 'on the line' ? 'at the pin' : `${side} of the pin`}, ${lengthText(at, units)} on`
}

/** How a club gets past trees and how many balls in a hundred they catch: `under, 35 % caught`. */
export function wayText({ trees: { way, caught } }: PlanOption): string {
  return caught < SMALLEST_PRINTED_SHARE ? way : `${way}, ${shareText(caught)} % caught`
}

/** What each club of a plan is aimed by. */
export function aimLine({
  hole,
  plan,
}: Pick<PlannedHole, 'hole' | 'plan'>): (option: PlanOption) => SentenceLine {
  const { x_m: x, y_m: y, lie } = plan.situation
  return sentenceLine(hole, { x, y, lie })
}

/** The middle of what is left, and between which lengths four in five of the balls leave. */
export function leaveText(option: PlanOption, units: ReaderUnits): string {
  const { p10, p50, p90 } = option.leave_m
  const bare = (metres: number): string => lengthText(metres, units).replace(/ .*/, '')
  return `${bare(p50)} (${bare(p10)} to ${bare(p90)})`
}

/** What changes the plan, a line each, and one line for what does not within the sensible range. */
export function flipLines(flips: readonly Flip[], units: ReaderUnits): string[] {
  const idle = flips.filter(({ at }) => at === null).map(changeText)
  return [
    ...flips.flatMap((flip) =>
      flip.at === null || flip.club === null
        ? []
        : [`${amountText(flip, flip.at, units)}: ${flip.club.replaceAll('-wedge', ' wedge')}`],
    ),
    ...(idle.length === 0 ? [] : [`nothing in the sensible range of: ${idle.join(', ')}`]),
  ]
}

/** `wind into`, `softer ground`, `wider spread`, `Heron pool further`. */
function changeText({ what, direction }: Flip): string {
  if (what === 'firmness') return `${direction} ground`
  if (what === 'spread') return `${direction} spread`
  return `${thing(what)} ${direction}`
}

/** `3 mph more wind into`, `Heron pool 30 yd further`, `softer ground, 0.40 ×`: how much of the change it takes. */
function amountText(flip: Flip, value: number, units: ReaderUnits): string {
  const { what, unit, direction } = flip
  if (unit === 'm') return `${thing(what)} ${lengthText(value, units)} ${direction}`
  if (unit === 'm/s') return `${windText(value, units)} more ${what} ${direction}`
  return `${changeText(flip)}, ${value.toFixed(2)} ×`
}

function thing(what: string): string {
  return what.replace(/^hazard:/, '').replaceAll('-', ' ')
}

/** What to play next from one place, as a line for a person. */
export function nextShotText(next: NextShot, units: ReaderUnits): string {
  const from = `${lengthText(next.from.y_m, units)} on, ${sideText(next.from.x_m, units)}, in the ${lieWord(next.lie)}`
  if (next.number === 'layup') return `from ${from}: lay up with the ${clubWords(next)}`
  return `from ${from}: ${clubWords(next)} to the ${next.number} number${playsText(next, units)}`
}

/** `, 152 yd, plays 160`: the second only where it is another number. */
function playsText({ distance_m: distance, plays_m: plays }: NextShot, units: ReaderUnits): string {
  return distance === null || plays === null ? '' : `, ${playingText(distance, plays, units)}`
}

/** `152 yd` or, where it plays another number, `152 yd, plays 160`. */
export function playingText(metres: number, playsMetres: number, units: ReaderUnits): string {
  const [number, plays] = [lengthNumber(metres, units), lengthNumber(playsMetres, units)]
  return number === plays ? lengthText(metres, units) : `${lengthText(metres, units)}, plays ${plays}`
}

function lieWord(lie: string): string {
  return lie.replace('-', ' ').replace('bunker', 'sand')
}
