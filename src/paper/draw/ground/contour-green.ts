import { type GreenSurface, greenSurface } from '#golf/course/green-surface.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { contourLines, type Field } from '../contour-lines.ts'
import type { Shape } from '../drawing.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { polygonOnSheet, type Sheet } from '../sheet.ts'
import { lineSteps, polygonSteps, polylineSteps } from '../steps.ts'

/** The green played to: fine contour lines of its surface and, where it is asked for, an arrow the way it falls in the mean. */
export function contourGreen(hole: Hole, sheet: Sheet, hasFallArrow: boolean): Shape[] {
  const { green } = hole
  const surface = greenSurface(hole)
  if (green === null || (green[0] ?? []).length < 3 || surface.source === 'level') return []
  const lines = contours(surface, green).map((points) => polylineSteps(points.map(sheet.toSheet)))
  if (lines.length === 0) return []
  return [
    {
      kind: 'group',
      name: 'green-contours',
      clip: polygonSteps(polygonOnSheet(sheet, green)),
      shapes: [
        { kind: 'path', steps: lines.flat(), stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline } },
      ],
    },
    ...(hasFallArrow && hole.greenFallPercent > LEAST_FALL_PERCENT ? fallArrow(hole, green, sheet) : []),
  ]
}

/** A green that falls less in the mean has no side to which an arrow could point. Our assumption. */
const LEAST_FALL_PERCENT = 0.05

/** The contour lines over a green's box, in the hole frame, at round heights above the pin. */
function contours(surface: GreenSurface, green: Polygon): (readonly Point[])[] {
  const resolution = DRAW_SETTINGS.greenContourCellMetres
  const { minX, minY, maxX, maxY } = polygonBounds(green)
  const [originX, originY] = [minX - resolution, minY - resolution]
  const columns = Math.ceil((maxX - minX) / resolution) + 3
  const rows = Math.ceil((maxY - minY) / resolution) + 3
  const values = Float64Array.from({ length: columns * rows }, (_, k) =>
    surface.heightAt(originX + (k % columns) * resolution, originY + Math.floor(k / columns) * resolution),
  )
  const field: Field = { originX, originY, resolution, columns, rows, values }
  const step = DRAW_SETTINGS.greenContourMetres
  const lines: (readonly Point[])[] = []
  const [low, high] = [Math.min(...values), Math.max(...values)]
  for (let index = Math.ceil(low / step); index * step < high; index += 1)
    for (const { points, isClosed } of contourLines(field, index * step))
      lines.push(withoutStraights(isClosed ? [...points, ...points.slice(0, 1)] : points))
  return lines
}

/** A line without the points on straight pieces of it: on a plane only its two ends are left. */
function withoutStraights(points: readonly Point[]): Point[] {
  return points.filter((point, index) => {
    const [before, after] = [points[index - 1], points[index + 1]]
    if (!before || !after) return true
    const turn =
      (point[0] - before[0]) * (after[1] - point[1]) - (point[1] - before[1]) * (after[0] - point[0])
    return Math.abs(turn) > STRAIGHT_SQUARE_METRES
  })
}

/** Twice the area of the corner that a point of a straight piece makes: far under the width of a line on any sheet. */
const STRAIGHT_SQUARE_METRES = 1e-6

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
