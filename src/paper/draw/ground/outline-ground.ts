import type { Area } from '#golf/course/course.ts'
import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import type { Shape, Step, Stroke } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { polygonOnSheet, type Sheet } from '../sheet.ts'
import { polygonSteps } from '../steps.ts'

/** How the edge of each ground is drawn, the widest line first; a ground that is not named has no line of its own. */
const EDGES: Readonly<Partial<Record<Ground, Stroke | readonly Stroke[]>>> = {
  out: { paint: 'ink', width: DRAW_SETTINGS.line * 2 },
  'first-cut': { paint: 'ink', width: DRAW_SETTINGS.hairline * 2, dash: [1.2, 2.6] },
  path: { paint: 'ink', width: DRAW_SETTINGS.hairline * 2, dash: [4, 2] },
  fairway: { paint: 'ink', width: DRAW_SETTINGS.fineLine * 2 },
  'penalty-red': { paint: 'ink', width: DRAW_SETTINGS.heavyLine * 2, dash: [9, 3.5] },
  'penalty-yellow': { paint: 'ink', width: DRAW_SETTINGS.heavyLine * 2, dash: [2.2, 3] },
  bunker: { paint: 'ink', width: DRAW_SETTINGS.line * 2 },
  fringe: { paint: 'ink', width: DRAW_SETTINGS.hairline * 2, dash: [1.6, 1.8] },
  green: { paint: 'ink', width: DRAW_SETTINGS.line * 2 },
  // Two fine lines: with one a tee would be told from a fairway by its size alone.
  tee: [
    { paint: 'ink', width: DRAW_SETTINGS.fineLine * 4 + DRAW_SETTINGS.teeGap * 2 },
    { paint: 'paper', width: DRAW_SETTINGS.fineLine * 2 + DRAW_SETTINGS.teeGap * 2 },
    { paint: 'ink', width: DRAW_SETTINGS.fineLine * 2 },
  ],
}

/**
 * The edges of every ground, class by class in painting order. Each class is stroked at twice its width and
 * then filled with paper, so that areas of one class that overlap lose their inner lines and whatever lies
 * under a later class disappears.
 */
export function outlineGround(areas: readonly Area[], sheet: Sheet): Shape[] {
  return GROUND_CLASSES.flatMap((ground): Shape[] => {
    const steps: Step[][] = areas
      .filter((area) => area.ground === ground)
      .map((area) => polygonSteps(polygonOnSheet(sheet, area.polygon)))
    if (steps.length === 0) return []
    const edges = [EDGES[ground] ?? []]
      .flat()
      .map((stroke): Shape => ({ kind: 'path', steps: steps.flat(), stroke: { ...stroke, join: 'round' } }))
    return [...edges, ...steps.map((each): Shape => ({ kind: 'path', steps: each, fill: 'paper' }))]
  })
}
