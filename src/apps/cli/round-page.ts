import { clubWords } from '#golf/strategy/plan-sentence.ts'
import type { PlannedHole } from './plan-one.ts'
import type { UnplannedHole } from './plan-round.ts'
import { aimLine, aimText } from './plan-words.ts'
import { tableLines } from './table.ts'
import { lengthNumber, type ReaderUnits } from './units-of-the-reader.ts'

const VERDICT_WORDS = { clear: '', close: 'close', 'too-close': 'too close to call' } as const

/** A round as one table, a row a hole, with the sum and the holes that have no plan. */
export function roundPage(
  planned: readonly PlannedHole[],
  unplanned: readonly UnplannedHole[],
  strokes: number,
  units: ReaderUnits,
): string[] {
  const plans = planned.map(({ plan }) => plan)
  const [first] = plans
  const columns = [
    { heading: 'hole', isFigure: true },
    { heading: 'par', isFigure: true },
    { heading: units === 'yards' ? 'yd' : 'm', isFigure: true },
    { heading: 'club' },
    { heading: 'aim' },
    { heading: 'score', isFigure: true },
    { heading: '' },
  ]
  const rows = planned.map((one) => {
    const { plan } = one
    const [best] = plan.options
    return [
      plan.hole.ref,
      String(plan.hole.par),
      lengthNumber(plan.hole.length_m, units),
      best === undefined ? '–' : clubWords(best),
      best === undefined ? '–' : aimText(best, aimLine(one)(best), units),
      plan.value.strokes.toFixed(2),
      VERDICT_WORDS[plan.verdict],
    ]
  })
  const par = plans.reduce((sum, plan) => sum + plan.hole.par, 0)
  return [
    ...(first === undefined
      ? []
      : [`${first.course}, ${first.player}`, '', ...tableLines(columns, rows), '']),
    ...unplanned.map(({ hole, code, message }) => `Hole ${hole} has no plan: ${code} ${message}`),
    ...(plans.length === 0
      ? []
      : [
          `Expected score for ${plans.length} hole${plans.length === 1 ? '' : 's'}, par ${par}: ${strokes.toFixed(1)}`,
        ]),
    ...[...new Set(plans.flatMap((plan) => plan.cautions))].map((caution) => `  ${caution}`),
  ]
}
