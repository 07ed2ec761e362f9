import type { Relief, ReliefRow } from '#golf/strategy/relief.ts'
import {
  clauseWords,
  editionWords,
  optionWords,
  penaltyWords,
  situationWords,
} from '#golf/strategy/relief-words.ts'
import type { Face, Paint, Shape } from '../drawing.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { lineSteps } from '../steps.ts'

/** Height of one option and of the heading above them, units. */
const ROW = 50
const HEADING = 46

/** Where the list stands on the sheet, units. */
export interface LegendBox {
  readonly left: number
  readonly top: number
  readonly width: number
}

/** What happened, in a heading: the situation, and the edition of the Rules it is judged by. */
export function drawReliefHeading(relief: Relief, { left, top, width }: LegendBox): Shape[] {
  const words = situationWords(relief.situation)
  return [
    text(`${words.charAt(0).toUpperCase()}${words.slice(1)}`, left, top + 17, 17, 'serif'),
    text(editionWords(relief.rules), left, top + 32, 10.5, 'serif-italic'),
    rule(left, top + 40, width),
  ]
}

/** Height that the heading takes, units. */
export const HEADING_HEIGHT: number = HEADING

/** The options by their letters: words, clause and penalty, where the spot is, and what it costs. */
export function drawReliefLegend(relief: Relief, { left, top, width }: LegendBox, ruler: Ruler): Shape[] {
  const end = left + width
  const rows = relief.options.flatMap((row, index): Shape[] => {
    const y = top + index * ROW
    return [
      text(row.letter, left, y + 17, 17, 'serif-bold', 'spot'),
      text(optionWords(row.kind), left + 22, y + 13, 12.5, 'serif'),
      text(
        `${clauseWords(row.clause)}, ${penaltyWords(row.penalty)}`,
        left + 22,
        y + 26.5,
        DRAW_SETTINGS.smallType,
        'sans',
      ),
      text(spotText(row, ruler), left + 22, y + 39, DRAW_SETTINGS.smallType, 'sans'),
      { ...text(scoreText(row), end, y + 14, 14, 'sans-bold'), anchor: 'end' },
      { ...text(costText(row), end, y + 27, DRAW_SETTINGS.smallType, 'sans'), anchor: 'end' },
      rule(left, y + ROW - 4, width),
    ]
  })
  const below = top + relief.options.length * ROW
  return [
    ...rows,
    ...relief.empty.map(({ kind, clause }, index) =>
      text(
        `${optionWords(kind)} (${clauseWords(clause)}) gives nothing here`,
        left,
        below + 12 + index * 13,
        DRAW_SETTINGS.smallType,
        'serif-italic',
      ),
    ),
    text(
      'A referee’s ruling and the Committee’s Local Rules stand.',
      left,
      below + 14 + relief.empty.length * 13,
      DRAW_SETTINGS.smallType,
      'serif-italic',
    ),
  ]
}

function spotText({ spot }: ReliefRow, ruler: Ruler): string {
  const aside = ruler.figure(Math.abs(spot.x_m))
  const side = aside === '0' ? 'on the line' : `${aside} ${spot.x_m < 0 ? 'left' : 'right'}`
  const lie = (spot.lie ?? spot.ground).replace('-', ' ')
  return `${ruler.figure(spot.y_m)} ${ruler.sign} on, ${side}; ${lie}; ${ruler.figure(spot.to_pin_m)} to the pin`
}

function scoreText({ strokes }: ReliefRow): string {
  return strokes === null ? '–' : strokes.toFixed(2)
}

function costText({ cost }: ReliefRow): string {
  return cost === null ? 'not priced' : cost === 0 ? 'expected score' : `+${cost.toFixed(2)}`
}

function text(words: string, x: number, y: number, size: number, face: Face, paint: Paint = 'ink') {
  return { kind: 'text', text: words, at: [x, y], size, paint, face } as const
}

function rule(left: number, y: number, width: number): Shape {
  return {
    kind: 'path',
    steps: lineSteps([left, y], [left + width, y]),
    stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
  }
}
