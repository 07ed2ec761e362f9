import { approachHole } from '#golf/course/approach-hole.ts'
import { type GreenSlope, greenSlopes } from '#golf/course/green-slopes.ts'
import { greenSurvey, greenSurveySentence } from '#golf/course/green-survey.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Drawing, Shape } from './drawing.ts'
import { drawGround } from './ground/draw-ground.ts'
import { groundMap } from './ground/ground-map.ts'
import { type Ruler, rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { polygonOnSheet, type Sheet, sheetInFrame } from './sheet.ts'
import { lineSteps, polygonSteps, rectangleSteps } from './steps.ts'

/** How large, and in which lengths. */
export interface GreenDrawingOptions {
  readonly width: number
  readonly height: number
  readonly units: 'yards' | 'metres'
}

/**
 * A green as the player comes to it, for practice and survey: contours, how it slopes from place to place in per cent with
 * arrows downhill, the places of its spot heights, and a scale on from its front. `null` when the survey lacks the green.
 */
export function drawGreen(surveyed: Hole, options: GreenDrawingOptions): Drawing | null {
  const hole = approachHole(surveyed)
  const survey = greenSurvey(hole)
  if (hole.green === null || survey === null) return null
  const { width, height } = options
  const ruler = rulerOf(options.units)
  const { minX, maxX, minY, maxY } = polygonBounds(hole.green)
  const frame = { left: SCALE_ROOM, top: 1, right: width - 1, bottom: height - 1 }
  const unitsPerMetre = Math.min(
    (frame.right - frame.left) / (maxX - minX + 2 * ROOM_METRES),
    (frame.bottom - frame.top) / (maxY - minY + 2 * ROOM_METRES),
  )
  const sheet = sheetInFrame(frame, [(minX + maxX) / 2, (minY + maxY) / 2], unitsPerMetre)
  const spots = hole.greenHeights?.kind === 'spot-heights' ? hole.greenHeights.spots : []
  const slopes = survey.source === 'level' ? [] : greenSlopes(hole, SLOPE_UNITS / unitsPerMetre)
  return {
    width,
    height,
    title: `Green ${hole.ref}`,
    description: greenSurveySentence(survey),
    shapes: [
      // Its arrows say where it falls, place by place.
      drawGround(hole, groundMap(hole.areas, sheet), sheet, false),
      {
        kind: 'path',
        steps: polygonSteps(polygonOnSheet(sheet, hole.green)),
        stroke: { paint: 'ink', width: DRAW_SETTINGS.heavyLine },
      },
      {
        kind: 'path',
        steps: spots.flatMap(({ position }) => crossSteps(sheet.toSheet(position))),
        stroke: { paint: 'spot', width: DRAW_SETTINGS.fineLine },
      },
      { kind: 'group', name: 'slopes', shapes: slopes.flatMap((slope) => slopeShapes(slope, sheet)) },
      ...scaleShapes(sheet, minY, ruler),
      {
        kind: 'path',
        steps: rectangleSteps(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top),
        stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
      },
    ],
  }
}

/** Room for the figures of the scale, units; ground round the green, metres; from one figure of slope to the next, units. */
const SCALE_ROOM = 40
const ROOM_METRES = 5
const SLOPE_UNITS = 46

/** A slope under this has no side to which an arrow could point, per cent. Our assumption. */
const LEAST_PERCENT = 0.1

function crossSteps([x, y]: Point) {
  return [...lineSteps([x - 3, y], [x + 3, y]), ...lineSteps([x, y - 3], [x, y + 3])]
}

/** An arrow downhill, its length by the slope, with the per cent below it. */
function slopeShapes({ at, percent, towardDegrees }: GreenSlope, sheet: Sheet): Shape[] {
  const [x, y] = sheet.toSheet(at)
  const figure: Shape = {
    kind: 'text',
    text: percent < 9.95 ? percent.toFixed(1) : percent.toFixed(0),
    at: [x, y + 14],
    size: DRAW_SETTINGS.smallType,
    paint: 'ink',
    face: 'sans',
    anchor: 'middle',
    halo: 2.5,
  }
  if (percent < LEAST_PERCENT) return [figure]
  const toward = degreesToRadians(towardDegrees)
  const [dx, dy] = [Math.sin(toward), -Math.cos(toward)]
  const half = Math.min(15, 4 + 1.6 * percent) / 2
  const tip: Point = [x + dx * half, y - 4 + dy * half]
  const barb = (sign: number): Point => [tip[0] - dx * 4 - dy * sign * 1.8, tip[1] - dy * 4 + dx * sign * 1.8]
  return [
    {
      kind: 'path',
      steps: lineSteps([x - dx * half, y - 4 - dy * half], tip),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    { kind: 'path', steps: [...lineSteps(barb(1), tip), ['L', ...barb(-1)], ['Z']], fill: 'ink' },
    figure,
  ]
}

/** Along the left side: every five units on from the front edge, a figure every ten. */
function scaleShapes(sheet: Sheet, frontY: number, ruler: Ruler): Shape[] {
  const { left, top, bottom } = sheet.frame
  const level = (count: number): number => sheet.toSheet([0, frontY + 5 * count * ruler.metres])[1]
  const counts = Array.from({ length: 60 }, (_, count) => count).filter(
    (count) => level(count) > top + 5 && level(count) < bottom,
  )
  return [
    {
      kind: 'path',
      steps: counts.flatMap((count) =>
        lineSteps([left - (count % 2 === 0 ? 6 : 3), level(count)], [left, level(count)]),
      ),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    ...counts
      .filter((count) => count % 2 === 0)
      .map(
        (count): Shape => ({
          kind: 'text',
          text: String(count * 5),
          at: [left - 9, level(count) + 3.5],
          size: DRAW_SETTINGS.smallType,
          paint: 'ink',
          face: 'sans',
          anchor: 'end',
        }),
      ),
    {
      kind: 'text',
      text: `${ruler.word} from the front`,
      at: [10, (top + bottom) / 2],
      size: DRAW_SETTINGS.smallType,
      paint: 'ink',
      face: 'serif-italic',
      anchor: 'middle',
      turn: -90,
    },
  ]
}
