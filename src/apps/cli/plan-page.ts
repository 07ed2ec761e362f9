import pc from 'picocolors'
import type { OutcomeGround, Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords, type SentenceLine } from '#golf/strategy/plan-sentence.ts'
import { roughWords } from '#golf/strategy/rough-words.ts'
import { formatCells, formatColumns, formatText } from './format-text.ts'
import type { Machine } from './machine.ts'
import type { PlannedHole } from './plan-one.ts'
import {
  aimLine,
  aimText,
  flipLines,
  leaveText,
  nextShotText,
  playingText,
  shareText,
  wayText,
} from './plan-words.ts'
import { CLUBS_PRINTED, SMALLEST_PRINTED_SHARE } from './settings.ts'
import { isShort, shortRows } from './short-rows.ts'
import { type Column, tableLines } from './table.ts'
import { lengthText, type ReaderUnits } from './units-of-the-reader.ts'

/** Columns of outcomes: heading and the grounds they add up. Printed only when some ball of some club finishes there. */
const OUTCOMES: readonly { readonly heading: string; readonly grounds: readonly OutcomeGround[] }[] = [
  { heading: 'green', grounds: ['green'] },
  { heading: 'fairway', grounds: ['fairway', 'tee', 'path', 'fringe'] },
  { heading: 'rough', grounds: ['first-cut', 'rough', 'heavy'] },
  { heading: 'sand', grounds: ['bunker'] },
  { heading: 'trees, scrub', grounds: ['trees', 'scrub'] },
  { heading: 'penalty', grounds: ['penalty'] },
  { heading: 'out', grounds: ['out'] },
]

/** One plan as a page of plain words: the sentence, the clubs with their cost, what would change it, what comes next. */
export function planPage(planned: PlannedHole, units: ReaderUnits, machine: Machine): string[] {
  const { plan } = planned
  const colours = pc.createColors(machine.hasColour)
  const { hole } = plan
  const tee = hole.tee === '' ? '' : ` from the ${hole.tee} tees`
  return [
    colours.bold(
      `Hole ${hole.ref}, par ${hole.par}, ${lengthText(hole.length_m, units)}${tee} · ${plan.course}`,
    ),
    `${plan.player}, ${situationText(plan, units)}${pinText(plan, units)}`,
    '',
    plan.sentence,
    '',
    `${valueText(plan)}${verdictText(plan)}`,
    ...(plan.format?.notes ?? []),
    '',
    ...clubLines(plan, aimLine(planned), units),
    ...listed('What would change it', flipLines(plan.flips, units)),
    ...listed(
      'Then',
      plan.then.map((next) => nextShotText(next, units)),
    ),
    ...listed('Mind', [...plan.cautions, ...roughWords([plan])]),
  ]
}

/** The expected score, and between which scores it lies for the players that this one may be. */
function valueText({ value, method, format, situation }: Plan): string {
  if (format !== null) return formatText(situation.objective, format, method.draws)
  if (method.draws === 0) return `Expected score ${twentieth(value.strokes)}.`
  return `Expected score ${twentieth(value.strokes)}, between ${twentieth(value.low)} and ${twentieth(value.high)}.`
}

function verdictText({ verdict, overruled }: Plan): string {
  if (verdict === 'clear') return ' The choice is clear.'
  if (verdict === 'close') return ' The choice is close: the first row is the better bet.'
  // Without a club asked for, the sentence above has said so.
  return overruled === null ? '' : ' The first two rows are too close to call.'
}

function twentieth(strokes: number): string {
  return (Math.round(strokes * 20) / 20).toFixed(2)
}

function situationText(plan: Plan, units: ReaderUnits): string {
  const { x_m: x, y_m: y, lie, sit } = plan.situation
  if (lie === 'tee' && x === 0 && y === 0) return 'from the tee'
  const side =
    Math.round(x) === 0 ? '' : `, ${lengthText(Math.abs(x), units)} ${x > 0 ? 'right' : 'left'} of the line`
  return `from ${lengthText(y, units)} on${side}, lie: ${sitText(lie, sit)}${stanceText(plan)}`
}

function sitText(lie: Plan['situation']['lie'], sit: Plan['situation']['sit']): string {
  if (sit === undefined) return lie.replace('-', ' ')
  if (sit === 'bare') return 'bare ground'
  if (sit === 'flier') return `${lie.replace('-', ' ')}, a flier`
  return `${lie}, ${sit === 'plugged' ? 'plugged' : sit === 'good' ? 'sitting well' : 'sitting down'}`
}

/** The slopes under the feet, and how far they turn the plan's own club. */
function stanceText({ situation, options }: Plan): string {
  if (!situation.stance) return ''
  const { uphill_deg: uphill, above_deg: above } = situation.stance
  const slopes = [
    ...(uphill === 0 ? [] : [`${Math.abs(uphill)}° ${uphill > 0 ? 'uphill' : 'downhill'}`]),
    ...(above === 0 ? [] : [`the ball ${Math.abs(above)}° ${above > 0 ? 'above' : 'below'} the feet`]),
  ]
  const aim = options[0]?.aim
  const turn = aim?.aimed_deg === undefined ? 0 : Math.round(aim.start_deg - aim.aimed_deg)
  const turned =
    turn === 0
      ? ''
      : `; the slope turns the first club about ${Math.abs(turn)}° ${turn > 0 ? 'right' : 'left'} of where it is aimed`
  return `, stance: ${slopes.join(', ')}${turned}`
}

/** How far the pin is and plays, where a stroke can reach it. */
function pinText({ plays }: Plan, units: ReaderUnits): string {
  return plays === null ? '' : `, the pin at ${playingText(plays.pin_m, plays.plays_m, units)}`
}

function clubLines(plan: Plan, line: (option: PlanOption) => SentenceLine, units: ReaderUnits): string[] {
  const { options, overruled, method } = plan
  const shown = options.filter((option, place) => place < CLUBS_PRINTED || option.club === overruled?.club)
  const rest = options.length - shown.length
  const more =
    rest === 0 ? [] : [`and ${rest} club${rest === 1 ? '' : 's'} that cost${rest === 1 ? 's' : ''} more`]
  const short = shown.filter(isShort)
  if (short.length > 0) return [...shortRows(short, method.draws > 0, units), ...more]
  const share = (option: PlanOption, grounds: readonly OutcomeGround[]): number =>
    grounds.reduce((sum, ground) => sum + (option.outcomes[ground] ?? 0), 0)
  const outcomes = OUTCOMES.filter(({ grounds }) =>
    shown.some((option) => share(option, grounds) >= SMALLEST_PRINTED_SHARE),
  )
  const hasWays = shown.some((option) => option.trees.way !== 'open')
  const columns: Column[] = [
    { heading: 'club' },
    { heading: 'aim' },
    ...(hasWays ? [{ heading: 'past the trees' }] : []),
    { heading: 'score', isFigure: true },
    ...formatColumns(plan),
    ...(method.draws === 0 ? [] : [{ heading: 'best in %', isFigure: true }]),
    ...outcomes.map(({ heading }) => ({ heading: `${heading} %`, isFigure: true })),
    { heading: `leaves ${units === 'yards' ? 'yd' : 'm'}` },
  ]
  const rows = shown.map((option) => [
    clubWords(option),
    aimText(option, line(option), units),
    ...(hasWays ? [wayText(option)] : []),
    option.strokes.toFixed(2),
    ...formatCells(plan, option),
    ...(method.draws === 0 ? [] : [shareText(option.best_in_draws)]),
    ...outcomes.map(({ grounds }) => shareText(share(option, grounds))),
    leaveText(option, units),
  ])
  return [...tableLines(columns, rows), ...more]
}

function listed(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]
}
