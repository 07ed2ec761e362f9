import { aimWords, betweenWords, worthWords } from '#golf/strategy/format-words.ts'
import type { FormatPart, Plan, PlanOption } from '#golf/strategy/plan.ts'
import { costText, shareText } from './plan-words.ts'
import type { Column } from './table.ts'

/** What the plan is worth, in the place of the expected score. */
export function formatText(
  name: Plan['situation']['objective'],
  { value, low, high, match }: FormatPart,
  draws: number,
): string {
  if (name === 'strokes') return ''
  const between = draws === 0 ? '' : `, between ${betweenWords(name, low, high)}`
  const aim = aimWords(name)
  const worth = `${aim.charAt(0).toUpperCase()}${aim.slice(1)}: ${worthWords(name, value)}${between}.`
  if (match === null) return worth
  return `${worth} The hole is won ${shareText(match.win)}, halved ${shareText(match.halve)} and lost ${shareText(match.lose)} times in 100.`
}

/** The columns of a club's worth and what it costs in the unit of the objective. */
export function formatColumns({ situation }: Plan): Column[] {
  if (situation.objective === 'strokes') return [{ heading: 'costs', isFigure: true }]
  if (situation.objective === 'points')
    return [
      { heading: 'points', isFigure: true },
      { heading: 'costs', isFigure: true },
    ]
  const heading = situation.objective === 'match' ? 'of the hole %' : `${aimWords(situation.objective)} %`
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
