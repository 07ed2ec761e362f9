import type { GroupShape, Shape } from '../drawing.ts'
import type { MovedGround } from '../hole-drawing-options.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { polygonOnSheet, type Sheet } from '../sheet.ts'
import { polygonSteps } from '../steps.ts'

/** Hazards that a person has moved: where they are taken to lie, and dotted where they were surveyed. */
export function drawMoved(moved: readonly MovedGround[], sheet: Sheet): GroupShape {
  const shapes = moved.flatMap(({ surveyed, now }): Shape[] => [
    {
      kind: 'path',
      steps: polygonSteps(polygonOnSheet(sheet, surveyed)),
      stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine, dash: [1.5, 3], cap: 'round' },
    },
    {
      kind: 'path',
      steps: polygonSteps(polygonOnSheet(sheet, now)),
      stroke: { paint: 'spot', width: DRAW_SETTINGS.heavyLine, join: 'round' },
    },
  ])
  return { kind: 'group', name: 'moved', shapes }
}
