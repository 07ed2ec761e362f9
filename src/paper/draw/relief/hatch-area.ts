import type { Polygon } from '#numbers/geometry/point.ts'
import type { GroupShape, Step } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { polygonOnSheet, type Sheet } from '../sheet.ts'
import { lineSteps, polygonSteps } from '../steps.ts'

/** Directions of the hatching of one option after the other, radians from level: no two alike in black and white. */
const DIRECTIONS = [Math.PI / 4, -Math.PI / 4, 0, Math.PI / 2, Math.PI / 8] as const

/** A relief area: its outline and, inside it, straight lines in the direction of its place in the list. */
export function hatchArea(area: readonly Polygon[], index: number, sheet: Sheet): GroupShape {
  const outline = area.flatMap((polygon) => polygonSteps(polygonOnSheet(sheet, polygon)))
  return {
    kind: 'group',
    name: 'relief-area',
    shapes: [
      {
        kind: 'group',
        clip: outline,
        shapes: [
          {
            kind: 'path',
            steps: hatching(outline, DIRECTIONS[index % DIRECTIONS.length] ?? 0),
            stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine },
          },
        ],
      },
      { kind: 'path', steps: outline, stroke: { paint: 'spot', width: DRAW_SETTINGS.line, join: 'round' } },
    ],
  }
}

/** Parallel lines over the box around an outline. */
function hatching(outline: readonly Step[], direction: number): Step[] {
  const points = outline.flatMap((step) =>
    step[0] === 'M' || step[0] === 'L' ? [[step[1], step[2]] as const] : [],
  )
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const middle = [(minX + maxX) / 2, (minY + maxY) / 2] as const
  const half = Math.hypot(maxX - minX, maxY - minY) / 2
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)]
  const count = Math.floor(half / DRAW_SETTINGS.reliefHatchSpacing)
  return Array.from({ length: 2 * count + 1 }, (_, line) => {
    const aside = (line - count) * DRAW_SETTINGS.reliefHatchSpacing
    const [x, y] = [middle[0] - aside * sin, middle[1] + aside * cos]
    return lineSteps([x - half * cos, y - half * sin], [x + half * cos, y + half * sin])
  }).flat()
}
