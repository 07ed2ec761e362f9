import type { Drawing, Shape } from './drawing.ts'
import { rowText } from './row-text.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps, rectangleSteps } from './steps.ts'

/** From what was expected, over what made it more or less, to the score. Strokes. */
export interface Waterfall {
  readonly expected: number
  /** Each with a name of a few words; more than expected is positive. */
  readonly steps: readonly { readonly name: string; readonly strokes: number }[]
  readonly score: number
}

const NAME_ROOM = 150
const FIGURE_ROOM = 44
const PAD_STROKES = 0.5

/**
 * A score taken apart, one row a step: each bar begins where the one above ended, so that the eye walks from what the plan
 * expected to the score. Strokes that were lost are solid, strokes that were gained are open. Sums are rounded and not steps, so
 * that the printed figures add up.
 */
export function drawWaterfall({ expected, steps, score }: Waterfall, width = 420): Drawing {
  const row = DRAW_SETTINGS.barRow
  const ends = [hundredths(expected)]
  let sum = expected
  for (const { strokes } of steps) {
    sum += strokes
    ends.push(hundredths(sum))
  }
  const [least, most] = [Math.min(...ends, score) - PAD_STROKES, Math.max(...ends, score) + PAD_STROKES]
  const left = NAME_ROOM
  const room = width - NAME_ROOM - FIGURE_ROOM
  const stepOf = (index: number): number => hundredths((ends[index + 1] as number) - (ends[index] as number))
  const at = (strokes: number): number => left + ((strokes - least) / (most - least)) * room
  const shapes: Shape[] = [
    ...totalRow('expected, with the plan', expected.toFixed(2), at(expected), 0, row),
    ...steps.flatMap(({ name }, index): Shape[] => {
      const strokes = stepOf(index)
      const top = (index + 1) * row
      const [from, to] = [at(ends[index] as number), at(ends[index + 1] as number)]
      const [low, high] = [Math.min(from, to), Math.max(from, to)]
      const bar = rectangleSteps(low, top + row / 2 - 4, Math.max(high - low, 0.4), 8)
      return [
        link(from, top, row),
        rowText(name, [0, top + row / 2 + 4], 'serif'),
        strokes > 0
          ? { kind: 'path', steps: bar, fill: 'ink' }
          : { kind: 'path', steps: bar, stroke: { paint: 'ink', width: DRAW_SETTINGS.line } },
        rowText(signed(strokes), [high + 6, top + row / 2 + 4], 'sans'),
      ]
    }),
    link(at(ends.at(-1) as number), (steps.length + 1) * row, row),
    ...totalRow('score', String(score), at(score), (steps.length + 1) * row, row),
  ]
  return {
    width,
    height: (steps.length + 2) * row,
    title: 'From plan to score',
    description: `The plan expected ${expected.toFixed(2)} strokes. ${steps
      .map(({ name }, index) => `${name}: ${signed(stepOf(index))}.`)
      .join(' ')} The score was ${score}.`,
    shapes,
  }
}

/** A total: a tick of its own with the figure in bold. */
function totalRow(name: string, figure: string, x: number, top: number, row: number): Shape[] {
  return [
    rowText(name, [0, top + row / 2 + 4], 'serif-bold'),
    {
      kind: 'path',
      steps: lineSteps([x, top + 3], [x, top + row - 3]),
      stroke: { paint: 'ink', width: 1.6 },
    },
    rowText(figure, [x + 6, top + row / 2 + 4], 'sans-bold'),
  ]
}

/** A fine line from the row above to where this row begins. */
function link(x: number, top: number, row: number): Shape {
  return {
    kind: 'path',
    steps: lineSteps([x, top - row / 2], [x, top + row / 2]),
    stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine, dash: [1.5, 1.5] },
  }
}

function hundredths(strokes: number): number {
  return Math.round(strokes * 100) / 100
}

/** `+1.30`, `−0.40`, `0.00`. */
function signed(strokes: number): string {
  const figure = Math.abs(strokes).toFixed(2)
  return strokes === 0 ? figure : `${strokes > 0 ? '+' : '−'}${figure}`
}
