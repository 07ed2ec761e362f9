import type { PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import type { Drawing, Shape, Step } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps, rectangleSteps } from './steps.ts'

/** How cost bars are drawn. */
export interface CostBarOptions {
  readonly width?: number
  /** The club whose row stands in the spot colour; absent = the first. */
  readonly chosen?: string
}

/** Room for the club's name and for the figure after the bar, units. */
const NAME_ROOM = 96
const FIGURE_ROOM = 40

/**
 * The clubs with what each costs against the best, one row a club: a bar, the likely range as a thin whisker, the
 * figure at the end. A bar too long for the sheet is broken, and its figure stays true.
 */
export function drawCostBars(options: readonly PlanOption[], drawing: CostBarOptions = {}): Drawing {
  const width = drawing.width ?? 420
  const row = DRAW_SETTINGS.barRow
  const chosen = drawing.chosen ?? options[0]?.club
  const full = fullCost(options)
  const shapes = options.flatMap((option, index): Shape[] => {
    const top = index * row
    const paint = option.club === chosen ? 'spot' : 'ink'
    return [
      {
        kind: 'text',
        text: clubWords(option),
        at: [0, top + row / 2 + 4],
        size: DRAW_SETTINGS.type,
        paint,
        face: option.club === chosen ? 'serif-bold' : 'serif',
      },
      ...costBar(option, full, NAME_ROOM, top, width - NAME_ROOM, paint === 'spot'),
      {
        kind: 'path',
        steps: lineSteps([0, top + row - 0.25], [width, top + row - 0.25]),
        stroke: { paint: 'ink', width: 0.3 },
      },
    ]
  })
  return {
    width,
    height: Math.max(row, options.length * row),
    title: 'What each club costs',
    description: options
      .map((option) => `${clubWords(option)}: ${costFigure(option.cost)} strokes.`)
      .join(' '),
    shapes,
  }
}

/** One club's bar alone, for a row of a table: the same marks on a sheet of their own. */
export function drawCostBar(option: PlanOption, full: number, width: number, isChosen: boolean): Drawing {
  return {
    width,
    height: DRAW_SETTINGS.barRow,
    title: `Cost of the ${clubWords(option)}`,
    description: `${costFigure(option.cost)} strokes, likely ${costFigure(option.cost_low)} to ${costFigure(option.cost_high)}.`,
    shapes: costBar(option, full, 1, 0, width - 1, isChosen),
  }
}

/** The cost at which a bar fills its room: the largest, but never so large that hundredths of a stroke vanish. */
export function fullCost(options: readonly PlanOption[]): number {
  const largest = Math.max(...options.map((option) => option.cost), 0)
  return Math.max(DRAW_SETTINGS.leastFullCost, Math.min(DRAW_SETTINGS.mostFullCost, largest))
}

/** A cost as it stands in tables: hundredths of a stroke, never a minus. */
export function costFigure(cost: number): string {
  return Math.max(0, cost).toFixed(2)
}

function costBar(
  option: PlanOption,
  full: number,
  left: number,
  top: number,
  width: number,
  isChosen: boolean,
): Shape[] {
  const paint = isChosen ? 'spot' : 'ink'
  const room = width - FIGURE_ROOM
  const middle = top + DRAW_SETTINGS.barRow / 2
  const reach = (cost: number): number => left + Math.min(1, Math.max(0, cost) / full) * room
  const end = reach(option.cost)
  const [low, high] = [reach(option.cost_low), reach(option.cost_high)]
  const isBroken = option.cost > full
  const broken: Step[] = [
    ...lineSteps([end - 12, middle + 6], [end - 8, middle - 6]),
    ...lineSteps([end - 9, middle + 6], [end - 5, middle - 6]),
  ]
  // Inside the bar the whisker is cut out of it, beyond it stands on the paper.
  const inside = lineSteps([low, middle], [Math.min(end, high), middle])
  const beyond = [
    ...lineSteps([Math.max(end, low), middle], [high, middle]),
    ...lineSteps([low, middle - 5], [low, middle + 5]),
    ...lineSteps([high, middle - 5], [high, middle + 5]),
  ]
  return [
    {
      kind: 'path',
      steps: lineSteps([left, middle - 8], [left, middle + 8]),
      stroke: { paint: 'ink', width: 0.8 },
    },
    ...(end - left < 0.3
      ? []
      : [{ kind: 'path', steps: rectangleSteps(left, middle - 2.5, end - left, 5), fill: paint } as const]),
    ...(isBroken ? [{ kind: 'path', steps: broken, stroke: { paint: 'paper', width: 1.6 } } as const] : []),
    ...(isBroken || high - low < 0.5
      ? []
      : [
          { kind: 'path', steps: inside, stroke: { paint: 'paper', width: 1 } } as const,
          { kind: 'path', steps: beyond, stroke: { paint, width: 1 } } as const,
        ]),
    {
      kind: 'text',
      text: costFigure(option.cost),
      at: [Math.max(end, isBroken ? end : high) + 6, middle + 4],
      size: DRAW_SETTINGS.type,
      paint,
      face: isChosen ? 'sans-bold' : 'sans',
    },
  ]
}
