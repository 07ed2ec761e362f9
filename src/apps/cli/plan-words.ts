import type { Flip, NextShot, PlanOption } from '#golf/strategy/plan.ts'
import { SMALLEST_PRINTED_COST, SMALLEST_PRINTED_SHARE } from './settings.ts'
import { lengthText, type ReaderUnits, sideText, windText } from './units-of-the-reader.ts'

/** A cost in strokes for a table: `–` when none is left after rounding, else `+0.04`. */
export function costText(cost: number): string {
  return Math.abs(cost) < SMALLEST_PRINTED_COST ? '–' : `${cost > 0 ? '+' : '−'}${Math.abs(cost).toFixed(2)}`
}

/** A cost in strokes for a sentence, to a twentieth of a stroke. */
export function costInWords(cost: number): string {
  const twentieths = Math.round(cost * 20)
  return twentieths === 0 ? 'less than 0.05 of a stroke' : `about ${(twentieths / 20).toFixed(2)} of a stroke`
}

/** A share 0–1 for a table: `–` when none is left, `<1` under one in a hundred, else per cent without the sign. */
export function shareText(share: number): string {
  if (share < SMALLEST_PRINTED_SHARE) return '–'
  return share < 0.01 ? '<1' : String(Math.round(share * 100))
}

/** Where the plan aims: `12 left at 196 yd`. */
export function aimText(option: PlanOption, units: ReaderUnits): string {
  return `${sideText(option.aim.offset_m, units)} at ${lengthText(option.aim.at_m, units)}`
}

/** The middle of what is left, and between which lengths four in five of the balls leave. */
export function leaveText(option: PlanOption, units: ReaderUnits): string {
  const { p10, p50, p90 } = option.leave_m
  const bare = (metres: number): string => lengthText(metres, units).replace(/ .*/, '')
  return `${bare(p50)} (${bare(p10)} to ${bare(p90)})`
}

/** One quantity and where it changes the plan, as a line for a person. */
export function flipText(flip: Flip, units: ReaderUnits): string {
  const what = flip.what.replace(/^hazard:/, '').replaceAll(/[-_:]/g, ' ')
  if (flip.at === null || flip.club === null) return `${what}: nothing in the sensible range changes it`
  return `${what} ${quantityText(flip.at, flip.unit, units)} ${flip.direction}: ${flip.club}`
}

function quantityText(value: number, unit: string, units: ReaderUnits): string {
  if (unit === 'm') return lengthText(value, units)
  if (unit === 'm/s') return windText(value, units)
  return `${Number(value.toFixed(2))}${unit === '' || unit === '×' ? ' times' : ` ${unit}`}`
}

/** What to play next from one place, as a line for a person. */
export function nextShotText(next: NextShot, units: ReaderUnits): string {
  const from = `${lengthText(next.from.y_m, units)} on, ${sideText(next.from.x_m, units)}, in the ${lieWord(next.lie)}`
  if (next.number === 'layup') return `from ${from}: lay up with the ${next.club}`
  return `from ${from}: ${next.club} to the ${next.number} number`
}

function lieWord(lie: string): string {
  return lie.replace('-', ' ').replace('bunker', 'sand')
}
