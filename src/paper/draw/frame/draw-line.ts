import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { pointAlong } from '#numbers/geometry/polyline.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { circleSteps, lineSteps, polylineSteps } from '../steps.ts'
import { type Figure, hidesGround, meetFigures } from './hides-ground.ts'

/**
 * The hole line with small ticks each 50 to the pin, the markers and the pin. The figure of a tick stands right of the line, or left
 * where it would hide a bunker, a tee or one of the figures that are there already; where neither is free the tick has none.
 */
export function drawLine(hole: Hole, sheet: Sheet, ruler: Ruler, figures: readonly Figure[]): GroupShape {
  const line = hole.line.map(sheet.toSheet)
  const shapes: Shape[] = [
    {
      kind: 'path',
      steps: polylineSteps(line),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline, dash: [9, 3, 1.5, 3] },
    },
  ]
  for (let count = 50; count * ruler.metres < hole.lengthMetres - 30; count += 50) {
    const metres = hole.lengthMetres - count * ruler.metres
    const at = sheet.toSheet(pointAlong(hole.line, metres))
    const ahead = sheet.toSheet(pointAlong(hole.line, metres + 1))
    const length = Math.max(1e-9, Math.hypot(ahead[0] - at[0], ahead[1] - at[1]))
    const [dx, dy] = [(ahead[0] - at[0]) / length, (ahead[1] - at[1]) / length]
    shapes.push({
      kind: 'path',
      steps: lineSteps([at[0] + dy * 3.5, at[1] - dx * 3.5], [at[0] - dy * 3.5, at[1] + dx * 3.5]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    })
    const beside = [
      { at: [at[0] - dy * 7, at[1] + dx * 7 + 3.2] },
      { at: [at[0] + dy * 7, at[1] - dx * 7 + 3.2], anchor: 'end' },
    ] as const
    const figure = beside
      .map((place) => ({ text: count.toString(), size: DRAW_SETTINGS.smallType - 1, ...place }))
      .find(
        (one) => !hidesGround(one, hole.areas, sheet) && !figures.some((other) => meetFigures(one, other)),
      )
    if (figure !== undefined)
      shapes.push({ kind: 'text', ...figure, paint: 'ink', face: 'serif-italic', halo: 1.8 })
  }
  shapes.push(...drawMarkers(sheet), ...drawPin(sheet.toSheet(hole.pin)))
  return { kind: 'group', name: 'line', shapes }
}

/** Two small triangles, the markers, square to the first leg. */
function drawMarkers(sheet: Sheet): Shape[] {
  const half = Math.max(5, 2.5 * sheet.unitsPerMetre)
  const [x, y] = sheet.toSheet([0, 0])
  return [-1, 1].map((side) => ({
    kind: 'path',
    steps: polylineSteps(
      [
        [x + side * half - 2.6, y + 1.8],
        [x + side * half + 2.6, y + 1.8],
        [x + side * half, y - 2.8],
      ],
      true,
    ),
    fill: 'ink',
  }))
}

/** A pin: its hole, its pole and a pennant. */
function drawPin([x, y]: Point): Shape[] {
  return [
    { kind: 'path', steps: circleSteps([x, y], 1.7), fill: 'ink', stroke: { paint: 'paper', width: 1.6 } },
    { kind: 'path', steps: lineSteps([x, y], [x, y - 21]), stroke: { paint: 'paper', width: 3 } },
    {
      kind: 'path',
      steps: polylineSteps(
        [
          [x, y - 22],
          [x + 12, y - 18.2],
          [x, y - 14.4],
        ],
        true,
      ),
      fill: 'ink',
      stroke: { paint: 'paper', width: 1 },
    },
    {
      kind: 'path',
      steps: lineSteps([x, y], [x, y - 22]),
      stroke: { paint: 'ink', width: 1.2, cap: 'round' },
    },
  ]
}
