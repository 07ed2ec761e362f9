import pc from 'picocolors'
import type { OutcomeGround, Plan, PlanOption } from '#golf/strategy/plan.ts'
import type { Machine } from './machine.ts'
import { aimText, costInWords, costText, flipText, leaveText, nextShotText, shareText } from './plan-words.ts'
import { CLUBS_PRINTED, SMALLEST_PRINTED_SHARE } from './settings.ts'
import { type Column, tableLines } from './table.ts'
import { lengthText, type ReaderUnits } from './units-of-the-reader.ts'

const VERDICTS = {
  clear: 'The choice is clear.',
  close: 'The choice is close: the first row is a little better.',
  'too-close': 'Too close to call: take the one you trust.',
} as const

/** Columns of outcomes: heading and the grounds they add up. Printed only when some ball of some club finishes there. */
const OUTCOMES: readonly { readonly heading: string; readonly grounds: readonly OutcomeGround[] }[] = [
  { heading: 'green', grounds: ['green'] },
  { heading: 'fairway', grounds: ['fairway', 'tee', 'path', 'fringe'] },
  { heading: 'rough', grounds: ['first-cut', 'rough', 'heavy'] },
  { heading: 'sand', grounds: ['bunker'] },
  { heading: 'trees', grounds: ['trees', 'scrub'] },
  { heading: 'penalty', grounds: ['penalty'] },
  { heading: 'out', grounds: ['out'] },
]

/** One plan as a page of plain words: the sentence, the clubs with their cost, what would change it, what comes next. */
export function planPage(plan: Plan, chosen: string | null, units: ReaderUnits, machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const { hole } = plan
  const tee = hole.tee === '' ? '' : ` from the ${hole.tee} tees`
  return [
    colours.bold(
      `Hole ${hole.ref}, par ${hole.par}, ${lengthText(hole.length_m, units)}${tee} · ${plan.course}`,
    ),
    `${plan.player}, ${situationText(plan, units)}`,
    '',
    plan.sentence,
    '',
    `Expected score ${twentieth(plan.value.strokes)}, between ${twentieth(plan.value.low)} and ${twentieth(plan.value.high)}. ${VERDICTS[plan.verdict]}`,
    ...priceLines(plan, chosen),
    '',
    ...clubLines(plan.options, units),
    ...listed(
      'What would change it',
      plan.flips.map((flip) => flipText(flip, units)),
    ),
    ...listed(
      'Then',
      plan.then.map((next) => nextShotText(next, units)),
    ),
    ...listed('Mind', [...plan.cautions, ...guessLines(plan)]),
  ]
}

function twentieth(strokes: number): string {
  return (Math.round(strokes * 20) / 20).toFixed(2)
}

function situationText(plan: Plan, units: ReaderUnits): string {
  const { x_m: x, y_m: y, lie } = plan.situation
  if (lie === 'tee' && x === 0 && y === 0) return 'from the tee'
  const side =
    Math.round(x) === 0 ? '' : `, ${lengthText(Math.abs(x), units)} ${x > 0 ? 'right' : 'left'} of the line`
  return `from ${lengthText(y, units)} on${side}, lie: ${lie.replace('-', ' ')}`
}

function priceLines(plan: Plan, chosen: string | null): string[] {
  const own = plan.options.find((option) => option.club === chosen)
  if (own === undefined) return []
  if (own.cost <= 0) return [`Your ${own.club} is the plan: it costs nothing.`]
  return [`Your ${own.club} costs ${costInWords(own.cost)} against the ${plan.options[0]?.club ?? 'plan'}.`]
}

function clubLines(options: readonly PlanOption[], units: ReaderUnits): string[] {
  const shown = options.slice(0, CLUBS_PRINTED)
  const share = (option: PlanOption, grounds: readonly OutcomeGround[]): number =>
    grounds.reduce((sum, ground) => sum + (option.outcomes[ground] ?? 0), 0)
  const outcomes = OUTCOMES.filter(({ grounds }) =>
    shown.some((option) => share(option, grounds) >= SMALLEST_PRINTED_SHARE),
  )
  const columns: Column[] = [
    { heading: 'club' },
    { heading: 'aim' },
    { heading: 'score', isFigure: true },
    { heading: 'costs', isFigure: true },
    { heading: 'best in %', isFigure: true },
    ...outcomes.map(({ heading }) => ({ heading: `${heading} %`, isFigure: true })),
    { heading: `leaves ${units === 'yards' ? 'yd' : 'm'}` },
  ]
  const rows = shown.map((option) => [
    option.club,
    aimText(option, units),
    option.strokes.toFixed(2),
    costText(option.cost),
    shareText(option.best_in_draws),
    ...outcomes.map(({ grounds }) => shareText(share(option, grounds))),
    leaveText(option, units),
  ])
  const rest = options.length - shown.length
  return [
    ...tableLines(columns, rows),
    ...(rest === 0
      ? []
      : [`and ${rest} club${rest === 1 ? '' : 's'} that cost${rest === 1 ? 's' : ''} more`]),
  ]
}

function guessLines(plan: Plan): string[] {
  const count = plan.guesses.length
  if (count === 0) return []
  return [
    `${count} of this player's numbers are guesses; type the carries of three clubs to replace the most important.`,
  ]
}

function listed(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]
}
