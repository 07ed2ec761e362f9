import type { Course } from '#golf/course/course.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { roughWords } from '#golf/strategy/rough-words.ts'
import { aimLine, aimText, shareText } from './plan-words.ts'
import { breakingLines, fieldShares } from './round-chances.ts'
import type { PlannedRound } from './rounds.ts'
import { tableLines } from './table.ts'
import { lengthNumber, lengthText, type ReaderUnits } from './units-of-the-reader.ts'

const VERDICT_WORDS = { clear: '', close: 'close', 'too-close': 'too close to call' } as const

/** A round as one table, a row a hole, with the sum, the holes that have no plan, and what to mind. */
export function roundPage(round: PlannedRound, units: ReaderUnits): string[] {
  return [...roundLines(round, units), ...cautionLines([round])]
}

/** The rounds of several players one below the other, then who is expected to need what, and how often each wins, ties shared. */
export function roundsPage(course: Course, rounds: readonly PlannedRound[], units: ReaderUnits): string[] {
  const field = fieldShares(course, rounds)
  const columns = [
    { heading: 'player' },
    { heading: 'holes', isFigure: true },
    { heading: 'score', isFigure: true },
    ...(field ? [{ heading: 'wins %', isFigure: true }] : []),
    ...(field?.net ? [{ heading: 'wins net %', isFigure: true }] : []),
  ]
  const rows = rounds.map(({ player, planned, strokes }, place) => [
    player.player.name,
    String(planned.length),
    planned.length === 0 ? '–' : strokes.toFixed(1),
    ...(field ? [shareText(field.gross[place] ?? 0)] : []),
    ...(field?.net ? [shareText(field.net[place] ?? 0)] : []),
  ])
  return [
    ...rounds.flatMap((round) => [...roundLines(round, units), '']),
    ...tableLines(columns, rows),
    ...cautionLines(rounds),
  ]
}

function roundLines(round: PlannedRound, units: ReaderUnits): string[] {
  const { player, planned, unplanned, strokes, points } = round
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
  const length = plans.reduce((sum, plan) => sum + plan.hole.length_m, 0)
  const holes = `${plans.length} hole${plans.length === 1 ? '' : 's'}`
  return [
    ...(first === undefined
      ? [player.player.name, '']
      : [`${first.course}, ${first.player}`, '', ...tableLines(columns, rows), '']),
    ...unplanned.map(
      ({ hole, code, message, where }) =>
        `Hole ${hole} has no plan: ${code} ${message}${where === '' || where === `hole ${hole}` ? '' : ` (${where})`}`,
    ),
    ...(first === undefined
      ? []
      : [`Expected score for ${holes}, par ${par}, ${lengthText(length, units)}: ${strokes.toFixed(1)}`]),
    ...(points === null
      ? []
      : [`Expected points: ${points.toFixed(1)}, with ${receivedOn(plans)} handicap strokes`]),
    ...breakingLines(round),
  ]
}

/** What to mind, each said once. */
function cautionLines(rounds: readonly PlannedRound[]): string[] {
  const plans = rounds.flatMap(({ planned }) => planned.map(({ plan }) => plan))
  const cautions = [...plans.flatMap((plan) => plan.cautions), ...roughWords(plans)]
  return [...new Set(cautions)].map((caution) => `  ${caution}`)
}

function receivedOn(plans: readonly Plan[]): number {
  return plans.reduce((sum, { format }) => sum + (format?.received ?? 0), 0)
}
