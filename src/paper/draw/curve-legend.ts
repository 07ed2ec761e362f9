import type { Point } from '#numbers/geometry/point.ts'
import { BAND_SPACING, BAND_STROKE, CURVE_STROKES, playedMark } from './curve-panel.ts'
import type { Shape } from './drawing.ts'
import { type LegendEntry, legend } from './legend.ts'
import { lineSteps } from './steps.ts'

/** What the lines and marks of the curves stand for. */
export function curveLegend(at: Point, width: number): ReturnType<typeof legend> {
  return legend(ENTRIES, at, width)
}

const ENTRIES: readonly LegendEntry[] = [
  { words: 'now', draw: (from, to) => [line(from, to, 'now')] },
  { words: 'nine times in ten', draw: band },
  { words: 'before the test', draw: (from, to) => [line(from, to, 'before')] },
  { words: 'tour player', draw: (from, to) => [line(from, to, 'tour')] },
  { words: 'played on the day', draw: ([x, y], [end]) => playedMark([(x + end) / 2, y]) },
]

function line(from: Point, to: Point, name: keyof typeof CURVE_STROKES): Shape {
  return { kind: 'path', steps: lineSteps(from, to), stroke: CURVE_STROKES[name] }
}

function band([x, y]: Point, [end]: Point): Shape[] {
  const count = Math.floor((end - x) / BAND_SPACING)
  const steps = Array.from({ length: count + 1 }, (_, index) =>
    lineSteps([x + index * BAND_SPACING, y - 6], [x + index * BAND_SPACING, y + 6]),
  )
  return [{ kind: 'path', steps: steps.flat(), stroke: BAND_STROKE }]
}
