import { contourLines, type Field } from '../contour-lines.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { polylineSteps, rectangleSteps } from '../steps.ts'

/** Expected score over the hole as contour lines with figures on them, as depths on a chart, cut to the frame. */
export function drawValues(values: Field, sheet: Sheet): GroupShape {
  const known = Array.from(values.values).filter((value) => !Number.isNaN(value))
  const step = DRAW_SETTINGS.valueContourStep
  const [low, high] = [Math.min(...known), Math.max(...known)]
  const { left, top, right, bottom } = sheet.frame
  const shapes: Shape[] = []
  for (let index = Math.ceil(low / step); index * step < high; index += 1) {
    const isWhole = Math.abs(index * step - Math.round(index * step)) < 1e-9
    for (const line of contourLines(values, index * step)) {
      if (line.points.length < 8) continue
      const points = line.points.map(sheet.toSheet)
      shapes.push({
        kind: 'path',
        steps: polylineSteps(points, line.isClosed),
        stroke: { paint: 'ink', width: isWhole ? DRAW_SETTINGS.line : DRAW_SETTINGS.hairline, join: 'round' },
      })
      const seen = points.filter(([x, y]) => x > left + 20 && x < right - 20 && y > top + 8 && y < bottom - 8)
      const at = seen[Math.floor(seen.length / 2)]
      if (at !== undefined)
        shapes.push({
          kind: 'text',
          text: (index * step).toFixed(2),
          at: [at[0], at[1] + 3],
          size: DRAW_SETTINGS.smallType,
          paint: 'ink',
          face: 'sans',
          anchor: 'middle',
          halo: 2.2,
        })
    }
  }
  return {
    kind: 'group',
    name: 'values',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes,
  }
}
