import type { Shape, Step } from './drawing.ts'
import { drawIsolines } from './marks/draw-pattern.ts'
import type { Pattern } from './pattern.ts'
import { type Ruler, rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import type { Sheet } from './sheet.ts'
import { lineSteps, rectangleSteps } from './steps.ts'

/** What stands on a range under the shots. */
export interface RangeOptions {
  readonly units: 'yards' | 'metres'
  /** The club in words, and what its pattern rests on: `carry 118 yd, from 66 shots`. */
  readonly club: string
  readonly basis: string
  /** The club's pattern as it is known now; `null` = none is drawn. */
  readonly pattern: Pattern | null
}

/** Width of the scale along the frame, units. */
const BAR = 5
/** A figure needs this much room along its scale, units. */
const FIGURE_ROOM = 26

/**
 * A range as a chart: a rule every ten along the line and to its sides, scales in alternating bars on the frame, and the
 * isolines of the club's present pattern at the same scale.
 */
export function drawRange(sheet: Sheet, options: RangeOptions): Shape[] {
  const ruler = rulerOf(options.units)
  const { left, top, right, bottom } = sheet.frame
  const clip = rectangleSteps(left, top, right - left, bottom - top)
  return [
    {
      kind: 'group',
      name: 'range',
      clip,
      shapes: [
        ...drawRules(sheet, ruler),
        ...(options.pattern === null ? [] : drawIsolines(options.pattern, sheet)),
      ],
    },
    ...drawScales(sheet, ruler),
    ...frameLines(sheet),
    ...drawNames(sheet, options),
  ]
}

/** Where the rules of one direction stand: whole tens, and their places on the sheet. */
function tens(from: number, to: number, ruler: Ruler): number[] {
  const step = 10 * ruler.metres
  const first = Math.ceil(from / step - 1e-9)
  return Array.from(
    { length: Math.max(0, Math.floor(to / step + 1e-9) - first + 1) },
    (_, index) => first + index,
  )
}

interface Reach {
  readonly up: readonly number[]
  readonly across: readonly number[]
}

function reachOf(sheet: Sheet, ruler: Ruler): Reach {
  const { left, top, right, bottom } = sheet.frame
  const [low, high] = [sheet.toHole([left, bottom]), sheet.toHole([right, top])]
  return { up: tens(Math.max(0, low[1]), high[1], ruler), across: tens(low[0], high[0], ruler) }
}

function drawRules(sheet: Sheet, ruler: Ruler): Shape[] {
  const { left, top, right, bottom } = sheet.frame
  const { up, across } = reachOf(sheet, ruler)
  const level = (ten: number): number => sheet.toSheet([0, ten * 10 * ruler.metres])[1]
  const aside = (ten: number): number => sheet.toSheet([ten * 10 * ruler.metres, 0])[0]
  const rule = (isWhole: (ten: number) => boolean): Step[] => [
    ...up.filter(isWhole).flatMap((ten) => lineSteps([left, level(ten)], [right, level(ten)])),
  ]
  return [
    {
      kind: 'path',
      steps: rule((ten) => ten % 5 !== 0),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, dash: [1, 3] },
    },
    {
      kind: 'path',
      steps: rule((ten) => ten % 5 === 0),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
    },
    {
      kind: 'path',
      steps: across
        .filter((ten) => ten !== 0)
        .flatMap((ten) => lineSteps([aside(ten), top], [aside(ten), bottom])),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, dash: [1, 5] },
    },
    {
      kind: 'path',
      steps: lineSteps([aside(0), bottom], [aside(0), top]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine, dash: [9, 3, 1.5, 3] },
    },
  ]
}

/** Scales along both sides and at the foot: bars of ten, figures as close as there is room for. */
function drawScales(sheet: Sheet, ruler: Ruler): Shape[] {
  const { left, top, right, bottom } = sheet.frame
  const ten = 10 * ruler.metres * sheet.unitsPerMetre
  const every = [1, 2, 5, 10].find((tensApart) => tensApart * ten >= FIGURE_ROOM) ?? 10
  const { up, across } = reachOf(sheet, ruler)
  const level = (count: number): number =>
    Math.max(top, Math.min(bottom, sheet.toSheet([0, count * 10 * ruler.metres])[1]))
  const aside = (count: number): number =>
    Math.max(left, Math.min(right, sheet.toSheet([count * 10 * ruler.metres, 0])[0]))
  const even = (counts: readonly number[]): number[] => {
    const [first = 0] = counts
    return [first - 1, ...counts].filter((count) => count % 2 === 0)
  }
  const bars = [
    ...even(up).flatMap((count) =>
      [left - BAR, right].flatMap((x) =>
        rectangleSteps(x, level(count + 1), BAR, level(count) - level(count + 1)),
      ),
    ),
    ...even(across).flatMap((count) =>
      rectangleSteps(aside(count), bottom, aside(count + 1) - aside(count), BAR),
    ),
  ]
  const text = { kind: 'text', size: DRAW_SETTINGS.smallType, paint: 'ink', face: 'sans' } as const
  return [
    { kind: 'path', steps: bars, fill: 'ink' },
    ...up
      .filter((count) => count % every === 0)
      .map(
        (count): Shape => ({
          ...text,
          text: String(count * 10),
          at: [left - BAR - 5, level(count) + 3.5],
          anchor: 'end',
        }),
      ),
    ...across
      .filter(
        (count) =>
          count % every === 0 && Math.abs(aside(count) - (left + right) / 2) < (right - left) / 2 - 6,
      )
      .map(
        (count): Shape => ({
          ...text,
          text: String(Math.abs(count * 10)),
          at: [aside(count), bottom + BAR + 12],
          anchor: 'middle',
        }),
      ),
  ]
}

function frameLines({ frame: { left, top, right, bottom } }: Sheet): Shape[] {
  const around = (by: number): Step[] =>
    rectangleSteps(left - by, top - by, right - left + 2 * by, bottom - top + 2 * by)
  return [
    {
      kind: 'path',
      steps: [...around(0), ...around(BAR)],
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    { kind: 'path', steps: around(BAR + 2), stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } },
  ]
}

/** The club and what its pattern rests on, top left; what the scales measure, beside them. */
function drawNames(sheet: Sheet, { club, basis, units }: RangeOptions): Shape[] {
  const { left, top, right, bottom } = sheet.frame
  const note = { kind: 'text', size: DRAW_SETTINGS.smallType, paint: 'ink', face: 'serif-italic' } as const
  return [
    { kind: 'text', text: club, at: [left + 12, top + 28], size: 24, paint: 'ink', face: 'serif', halo: 4 },
    { ...note, text: basis, at: [left + 12, top + 45], size: DRAW_SETTINGS.type + 1, halo: 3 },
    { ...note, text: `${units} along the line`, at: [10, (top + bottom) / 2], anchor: 'middle', turn: -90 },
    { ...note, text: 'left', at: [left, bottom + BAR + 26] },
    { ...note, text: `${units} off the line`, at: [(left + right) / 2, bottom + BAR + 26], anchor: 'middle' },
    { ...note, text: 'right', at: [right, bottom + BAR + 26], anchor: 'end' },
  ]
}
