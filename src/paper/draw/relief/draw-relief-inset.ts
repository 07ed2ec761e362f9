import type { Hole } from '#golf/course/hole.ts'
import type { Relief } from '#golf/strategy/relief.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { GroupShape, Shape } from '../drawing.ts'
import { drawGround } from '../ground/draw-ground.ts'
import { groundMap } from '../ground/ground-map.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import { type Sheet, sheetInFrame } from '../sheet.ts'
import { lineSteps, rectangleSteps } from '../steps.ts'
import { drawReliefMarks } from './draw-relief-marks.ts'

/** Spots and areas further than this from the place that matters stand on the chart of the hole alone, metres. */
const NEAR_METRES = 14
/** The least ground an enlarged plan shows across, and what it leaves around its marks, metres. */
const LEAST_METRES = 12
const MARGIN_METRES = 1.6

/** A square of the sheet on which the ground about the point of crossing, or the ball, is drawn large. */
export function insetSheet(
  relief: Relief,
  box: { readonly left: number; readonly top: number; readonly side: number },
): Sheet {
  const { situation, options } = relief
  const [first, ...rest] = options.map(({ reference }): Point => [reference.x_m, reference.y_m])
  const known = situation.crossing ?? situation.ball
  const about: Point = known ? [known.x_m, known.y_m] : (first ?? rest[0] ?? [0, 0])
  const shown = options
    .flatMap(({ spot, area_m: area }): readonly Point[] => [[spot.x_m, spot.y_m], ...area.flat(2)])
    .filter(([x, y]) => Math.hypot(x - about[0], y - about[1]) <= NEAR_METRES)
  const [xs, ys] = [[about, ...shown].map(([x]) => x), [about, ...shown].map(([, y]) => y)]
  const [minX, maxX, minY, maxY] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const across = Math.max(LEAST_METRES, maxX - minX + 2 * MARGIN_METRES, maxY - minY + 2 * MARGIN_METRES)
  const frame = { left: box.left, top: box.top, right: box.left + box.side, bottom: box.top + box.side }
  return sheetInFrame(frame, [(minX + maxX) / 2, (minY + maxY) / 2], box.side / across)
}

/** The enlarged plan: ground and marks cut to a neat line, an arrow to the hole and a scale of its own. */
export function drawReliefInset(hole: Hole, relief: Relief, sheet: Sheet, ruler: Ruler): Shape[] {
  const { left, top, right } = sheet.frame
  const side = right - left
  return [
    { kind: 'path', steps: rectangleSteps(left, top, side, side), fill: 'paper' },
    drawGround(hole, groundMap(hole.areas, sheet), sheet),
    drawReliefMarks(relief, sheet, hole.pin),
    ...toTheHole(hole, sheet),
    ...scaleBar(sheet, ruler),
    {
      kind: 'path',
      steps: [...rectangleSteps(left, top, side, side)],
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    {
      kind: 'path',
      steps: rectangleSteps(left - 3, top - 3, side + 6, side + 6),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
    },
  ]
}

/** The ground that the enlarged plan shows, as a thin square on the chart of the hole, cut to its frame. */
export function insetWindow(inset: Sheet, sheet: Sheet): GroupShape {
  const { left, top, right, bottom } = inset.frame
  const [x, y] = sheet.toSheet(inset.toHole([left, top]))
  const [endX, endY] = sheet.toSheet(inset.toHole([right, bottom]))
  const { frame } = sheet
  return {
    kind: 'group',
    name: 'window',
    clip: rectangleSteps(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top),
    shapes: [
      {
        kind: 'path',
        steps: rectangleSteps(x, y, endX - x, endY - y),
        stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
      },
    ],
  }
}

/** An arrow in the upper right corner that points at the hole. */
function toTheHole(hole: Hole, sheet: Sheet): Shape[] {
  const { right, top } = sheet.frame
  const centre: Point = [right - 26, top + 30]
  const pin = sheet.toSheet(hole.pin)
  const length = Math.max(1e-9, Math.hypot(pin[0] - centre[0], pin[1] - centre[1]))
  const [dx, dy] = [(pin[0] - centre[0]) / length, (pin[1] - centre[1]) / length]
  const tip: Point = [centre[0] + dx * 12, centre[1] + dy * 12]
  const tail: Point = [centre[0] - dx * 12, centre[1] - dy * 12]
  return [
    {
      kind: 'path',
      steps: rectangleSteps(right - 50, top + 8, 44, 56),
      fill: 'paper',
    },
    { kind: 'path', steps: lineSteps(tail, tip), stroke: { paint: 'ink', width: DRAW_SETTINGS.line } },
    {
      kind: 'path',
      steps: [
        ['M', tip[0], tip[1]],
        ['L', tip[0] - dx * 7 - dy * 2.6, tip[1] - dy * 7 + dx * 2.6],
        ['L', tip[0] - dx * 7 + dy * 2.6, tip[1] - dy * 7 - dx * 2.6],
        ['Z'],
      ],
      fill: 'ink',
    },
    {
      kind: 'text',
      text: 'hole',
      at: [right - 28, top + 59],
      size: DRAW_SETTINGS.smallType,
      paint: 'ink',
      face: 'serif-italic',
      anchor: 'middle',
    },
  ]
}

/** A bar of two or five units in the lower left corner. */
function scaleBar(sheet: Sheet, ruler: Ruler): Shape[] {
  const { left, right, bottom } = sheet.frame
  const one = sheet.unitsPerMetre * ruler.metres
  const count = [10, 5, 2, 1].find((units) => units * one < (right - left) / 3) ?? 1
  const [x, y] = [left + 10, bottom - 12]
  const width = count * one
  return [
    { kind: 'path', steps: rectangleSteps(x - 6, y - 17, width + 12, 25), fill: 'paper' },
    { kind: 'path', steps: rectangleSteps(x, y - 2, width / 2, 4), fill: 'ink' },
    {
      kind: 'path',
      steps: rectangleSteps(x, y - 2, width, 4),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    {
      kind: 'text',
      text: `${count} ${ruler.sign}`,
      at: [x + width / 2, y - 6],
      size: DRAW_SETTINGS.smallType,
      paint: 'ink',
      face: 'sans',
      anchor: 'middle',
    },
  ]
}
