import type { Point } from '#numbers/geometry/point.ts'
import type { GroupShape } from '../drawing.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { lineSteps } from '../steps.ts'

/** A distance measured by a person: a line with a bar across each end and its length beside it. */
export function drawMeasured([from, to]: readonly [Point, Point], sheet: Sheet, ruler: Ruler): GroupShape {
  const [a, b] = [sheet.toSheet(from), sheet.toSheet(to)]
  const length = Math.max(1e-9, Math.hypot(b[0] - a[0], b[1] - a[1]))
  const [dx, dy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
  const bar = ([x, y]: Point) => lineSteps([x - dy * BAR, y + dx * BAR], [x + dy * BAR, y - dx * BAR])
  const metres = Math.hypot(to[0] - from[0], to[1] - from[1])
  return {
    kind: 'group',
    name: 'measured',
    shapes: [
      {
        kind: 'path',
        steps: [...lineSteps(a, b), ...bar(a), ...bar(b)],
        stroke: { paint: 'spot', width: DRAW_SETTINGS.line },
      },
      {
        kind: 'text',
        text: `${ruler.figure(metres)} ${ruler.word}`,
        at: [(a[0] + b[0]) / 2 + Math.abs(dy) * 8, (a[1] + b[1]) / 2 + (Math.abs(dx) > 0.7 ? -8 : 4)],
        size: DRAW_SETTINGS.smallType * 1.3,
        paint: 'spot',
        face: 'sans-bold',
        halo: 3,
      },
    ],
  }
}

/** Half the length of the bar across an end, units. */
const BAR = 6
