import { capital } from '#golf/strategy/capital.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import { betweenWords, worthWords } from '#golf/strategy/format-words.ts'
import type { FormatPart, Plan, PlanOption } from '#golf/strategy/plan.ts'
import { shareText } from './plan-words.ts'
import type { Column } from './table.ts'

/** What the plan is worth, in the place of the expected score. */
export function formatText(
  name: Plan['situation']['objective'],
  { aim, value, low, high, match }: FormatPart,
  draws: number,
): string {
  if (name === 'strokes') return ''
  const objective = { name, aim }
  const between = draws === 0 ? '' : `, between ${betweenWords(objective, low, high)}`
  const what = name === 'points' || name === 'match' ? 'Expected' : capital(aim)
  const worth = `${what}: ${worthWords(objective, value)}${between}.`
  if (match === null) return worth
  return `${worth} The hole is won ${shareText(match.win)}, halved ${shareText(match.halve)} and lost ${shareText(match.lose)} times in 100.`
}

/** The columns of a club's worth and what it costs in the unit of the objective. */
export function formatColumns({ situation, format }: Plan): Column[] {
  if (situation.objective === 'strokes') return [{ heading: 'costs', isFigure: true }]
  if (situation.objective === 'points')
    return [
      { heading: 'points', isFigure: true },
      { heading: 'costs', isFigure: true },
    ]
  const heading = situation.objective === 'match' ? `${format?.aim.replace('the ', '') ?? ''} %` : 'made %'
  return [
    { heading, isFigure: true },
    { heading: 'costs %', isFigure: true },
  ]
}

/** The cells of those columns. */
export function formatCells({ situation }: Plan, option: PlanOption): string[] {
  if (situation.objective === 'strokes') return [costText(option.cost)]
  const { worth = 0 } = option
  if (situation.objective === 'points') return [worth.toFixed(2), costText(option.cost)]
  return [shareText(worth), shareText(option.cost)]
}
