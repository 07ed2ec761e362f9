import { costText } from '#golf/strategy/cost-text.ts'
import type { PlanOption, ShortPart } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'
import { shareText } from './plan-words.ts'
import { type Column, tableLines } from './table.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** An option of a plan near the green. */
export type ShortOption = PlanOption & { readonly short: ShortPart }

/** Whether an option is a short shot, with its landing spot and roll. */
export function isShort(option: PlanOption): option is ShortOption {
  return option.short !== undefined
}

/** The short shots of a plan as a table: where to land, carry and roll, the cost, and how it goes right and wrong. */
export function shortRows(options: readonly ShortOption[], hasDraws: boolean, units: ReaderUnits): string[] {
  const columns: Column[] = [
    { heading: 'club' },
    { heading: 'lands' },
    { heading: units === 'yards' ? 'carry paces' : 'carry m', isFigure: true },
    { heading: units === 'yards' ? 'roll paces' : 'roll m', isFigure: true },
    { heading: 'start' },
    { heading: 'score', isFigure: true },
    { heading: 'costs', isFigure: true },
    ...(hasDraws ? [{ heading: 'best in %', isFigure: true }] : []),
    { heading: 'in two %', isFigure: true },
    { heading: units === 'yards' ? 'leaves ft' : 'leaves m' },
    { heading: 'worst tenth', isFigure: true },
  ]
  return tableLines(
    columns,
    options.map((option) => {
      const { short } = option
      return [
        clubWords(option),
        landsText(option, units),
        option.shape === 'putt' ? '–' : stepsText(short.carry_m, units),
        stepsText(short.roll_m, units),
        besideText(short.start_beside_pin_m, units),
        option.strokes.toFixed(2),
        costText(option.cost),
        ...(hasDraws ? [shareText(option.best_in_draws)] : []),
        shareText(short.up_and_down),
        `${feetText(option.leave_m.p50, units)} (${feetText(option.leave_m.p10, units)} to ${feetText(option.leave_m.p90, units)})`,
        short.worst.strokes.toFixed(1),
      ]
    }),
  )
}

function landsText({ shape, short }: ShortOption, units: ReaderUnits): string {
  if (shape === 'putt') return '–'
  const { ground, on_green_m: on } = short.landing
  return on === null ? ground.replace('-', ' ').replace('bunker', 'sand') : `${stepsText(on, units)} on`
}

/** Paces of a yard, or metres to a half. */
function stepsText(metres: number, units: ReaderUnits): string {
  const paces = units === 'yards' ? metres / METRES_PER_YARD : metres
  return paces < 0.25 ? '0' : paces < 3 ? String(Math.round(paces * 2) / 2) : String(Math.round(paces))
}

function feetText(metres: number, units: ReaderUnits): string {
  return units === 'yards' ? String(Math.round(metres / METRES_PER_FOOT)) : metres.toFixed(1)
}

function besideText(metres: number, units: ReaderUnits): string {
  if (Math.abs(metres) < METRES_PER_FOOT / 2) return 'at the pin'
  const length = `${feetText(Math.abs(metres), units)} ${units === 'yards' ? 'ft' : 'm'}`
  return `${length} ${metres < 0 ? 'left' : 'right'}`
}
