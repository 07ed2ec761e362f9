import type { ShotMarks } from '#golf/player/shot-marks.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Shape, Stroke } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { lineSteps } from './steps.ts'

/** A kind of line and what it stands for. */
export interface ChangeLine {
  readonly words: string
  readonly stroke: Stroke
}

const ROW = 22
const SAMPLE = 40

/** Samples of the lines and marks of a pattern with their words, in two columns from `at` down. */
export function lineLegend(
  lines: readonly ChangeLine[],
  { places }: Pick<ShotMarks, 'places'>,
  [left, top]: Point,
  width: number,
): { readonly shapes: readonly Shape[]; readonly height: number } {
  const column = width / 2
  const placeOf = (entry: number): Point => [left + (entry % 2) * column, top + Math.floor(entry / 2) * ROW]
  const words = (text: string, [x, y]: Point): Shape => ({
    kind: 'text',
    text,
    at: [x + SAMPLE + 10, y + 5],
    size: DRAW_SETTINGS.farType,
    paint: 'ink',
    face: 'serif',
  })
  const hasMishits = places.some(({ isMishit }) => isMishit)
  const marks: [string, (at: Point) => Shape][] = [
    ['a ball that came down', ([x, y]) => ({ kind: 'dots', points: [[x, y]], radius: 1.9, fill: 'spot' })],
    ...(hasMishits ? [['a mishit, by the player’s word', cross] as [string, (at: Point) => Shape]] : []),
  ]
  const shown = places.length === 0 ? [] : marks
  return {
    shapes: [
      ...lines.flatMap(({ words: text, stroke }, entry): Shape[] => {
        const [x, y] = placeOf(entry)
        return [{ kind: 'path', steps: lineSteps([x, y], [x + SAMPLE, y]), stroke }, words(text, [x, y])]
      }),
      ...shown.flatMap(([text, draw], index): Shape[] => {
        const [x, y] = placeOf(lines.length + index)
        return [draw([x + SAMPLE / 2, y]), words(text, [x, y])]
      }),
    ],
    height: Math.ceil((lines.length + shown.length) / 2) * ROW,
  }
}

function cross([x, y]: Point): Shape {
  return {
    kind: 'path',
    steps: [...lineSteps([x - 3, y - 3], [x + 3, y + 3]), ...lineSteps([x - 3, y + 3], [x + 3, y - 3])],
    stroke: { paint: 'spot', width: 1.3, cap: 'round' },
  }
}
