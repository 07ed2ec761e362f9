import type { Hole } from '#golf/course/hole.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Shape, Step } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { polygonOnSheet, type Sheet } from '../sheet.ts'
import { lineSteps, polygonSteps } from '../steps.ts'

/** The green played to: fine contour lines of its mean fall and an arrow the way a ball would roll. */
export function contourGreen(hole: Hole, sheet: Sheet): Shape[] {
  const green = hole.green
  const ring = green?.[0]
  if (green === null || ring === undefined || hole.greenFallPercent <= 0.05) return []
  const fall = (hole.greenFallTowardDegrees * Math.PI) / 180
  const down: Point = [Math.sin(fall), Math.cos(fall)]
  const across: Point = [down[1], -down[0]]
  const spacing = DRAW_SETTINGS.greenContourMetres / (hole.greenFallPercent / 100)
  const along = ring.map(([x, y]) => x * down[0] + y * down[1])
  const beside = ring.map(([x, y]) => x * across[0] + y * across[1])
  const [low, high] = [Math.min(...along), Math.max(...along)]
  const [left, right] = [Math.min(...beside), Math.max(...beside)]
  const place = (a: number, b: number): Point =>
    sheet.toSheet([a * down[0] + b * across[0], a * down[1] + b * across[1]])
  const steps: Step[] = []
  for (let index = Math.ceil(low / spacing); index * spacing < high; index += 1)
    steps.push(...lineSteps(place(index * spacing, left), place(index * spacing, right)))
  return [
    {
      kind: 'group',
      name: 'green-contours',
      clip: polygonSteps(polygonOnSheet(sheet, green)),
      shapes: [{ kind: 'path', steps, stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } }],
    },
    ...fallArrow(hole, green, sheet),
  ]
}

/** A slender arrow downhill across the side of the green away from the pin. */
function fallArrow(hole: Hole, green: Polygon, sheet: Sheet): Shape[] {
  const corners = (green[0] ?? []).map(sheet.toSheet)
  const middle: Point = [
    corners.reduce((sum, [x]) => sum + x, 0) / corners.length,
    corners.reduce((sum, [, y]) => sum + y, 0) / corners.length,
  ]
  const pin = sheet.toSheet(hole.pin)
  const fall = (hole.greenFallTowardDegrees * Math.PI) / 180
  const [dx, dy] = [Math.sin(fall), -Math.cos(fall)]
  const side = (pin[0] - middle[0]) * -dy + (pin[1] - middle[1]) * dx > 0 ? -1 : 1
  const reach = Math.max(...corners.map(([x, y]) => Math.hypot(x - middle[0], y - middle[1])))
  const [x, y] = [middle[0] - dy * side * reach * 0.35, middle[1] + dx * side * reach * 0.35]
  const half = Math.max(7, Math.min(13, reach * 0.42))
  const tip: Point = [x + dx * half, y + dy * half]
  const barb = (sign: number): Point => [tip[0] - dx * 4.5 - dy * sign * 2, tip[1] - dy * 4.5 + dx * sign * 2]
  return [
    {
      kind: 'path',
      steps: lineSteps([x - dx * half, y - dy * half], tip),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine, cap: 'round' },
    },
    { kind: 'path', steps: [...lineSteps(barb(1), tip), ['L', ...barb(-1)], ['Z']], fill: 'ink' },
  ]
}
