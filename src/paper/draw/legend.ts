import type { Point } from '#numbers/geometry/point.ts'
import type { Shape } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'

/** A kind of line or mark and what it stands for; `draw` fills the stretch between two places of one height. */
export interface LegendEntry {
  readonly words: string
  readonly draw: (from: Point, to: Point) => readonly Shape[]
}

const ROW = 22
const SAMPLE = 40

/** Samples with their words, in two columns from a place down; `height` is what they take. */
export function legend(
  entries: readonly LegendEntry[],
  [left, top]: Point,
  width: number,
): { readonly shapes: readonly Shape[]; readonly height: number } {
  return {
    shapes: entries.flatMap(({ words, draw }, entry): Shape[] => {
      const [x, y] = [left + (entry % 2) * (width / 2), top + Math.floor(entry / 2) * ROW]
      return [
        ...draw([x, y], [x + SAMPLE, y]),
        {
          kind: 'text',
          text: words,
          at: [x + SAMPLE + 10, y + 5],
          size: DRAW_SETTINGS.farType,
          paint: 'ink',
          face: 'serif',
        },
      ]
    }),
    height: Math.ceil(entries.length / 2) * ROW,
  }
}
