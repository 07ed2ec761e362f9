import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { describeHole } from './describe-hole.ts'
import type { Drawing, GroupShape, Shape, TextShape } from './drawing.ts'
import { COMPASS_SIZE, drawCompass } from './frame/draw-compass.ts'
import { drawFrame } from './frame/draw-frame.ts'
import { drawLine } from './frame/draw-line.ts'
import { drawMeasures } from './frame/draw-measures.ts'
import { drawTitle, titleSize } from './frame/draw-title.ts'
import { type Block, emptiestPlace } from './frame/emptiest-corner.ts'
import { drawGround } from './ground/draw-ground.ts'
import { groundMap } from './ground/ground-map.ts'
import type { HoleDrawingOptions } from './hole-drawing-options.ts'
import { drawAim, drawCarryArcs } from './marks/draw-aim.ts'
import { drawMeasured } from './marks/draw-measured.ts'
import { drawMoved } from './marks/draw-moved.ts'
import { drawPattern } from './marks/draw-pattern.ts'
import { drawValues } from './marks/draw-values.ts'
import { drawReliefMarks } from './relief/draw-relief-marks.ts'
import { type Ruler, rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { layOutSheet, type Sheet } from './sheet.ts'
import { rectangleSteps } from './steps.ts'

/**
 * A hole as a surveyor would engrave it, tee at the bottom, to true scale, with the player's own marks in the spot
 * colour. The same hole and options give the same drawing to the last digit.
 */
export function drawHole(hole: Hole, options: HoleDrawingOptions = {}): Drawing {
  const sheet = layOutSheet(hole, options)
  const survey = drawSurvey(hole, sheet, options)
  return {
    width: sheet.width,
    height: sheet.height,
    title: `Hole ${hole.ref}${hole.name === null ? '' : `, ${hole.name}`}`,
    description: describeHole(hole, options),
    shapes: [...survey.ground, drawMarks(sheet, options), ...survey.furniture],
  }
}

/** The surveyed part of the chart in two layers: the ground, below the player's marks, and the frame and title above them. */
export interface Survey {
  readonly ground: readonly Shape[]
  readonly furniture: readonly Shape[]
}

/** Draws what changes only with hole, tee, pin, wind and units. */
export function drawSurvey(hole: Hole, sheet: Sheet, options: HoleDrawingOptions): Survey {
  const ruler = rulerOf(options.units)
  const map = groundMap(hole.areas, sheet)
  const line = hole.line.map(sheet.toSheet)
  const { measures } = options
  const figures = measures === undefined ? null : drawMeasures(hole, measures, sheet, ruler)
  const numbers = (figures?.shapes ?? []).flatMap((shape) => (shape.kind === 'text' ? [shape] : []))
  const avoid = numbers.map(middleOf)
  const title =
    options.hasTitle === false
      ? null
      : emptiestPlace(map, titleSize(hole, options), line, avoid, [], DRAW_SETTINGS.titleLimit)
  const hasCompass = !hole.isBearingInvented || options.wind !== undefined
  const compass = hasCompass
    ? emptiestPlace(map, COMPASS_SIZE, line, avoid, title === null ? [] : [title], DRAW_SETTINGS.compassLimit)
    : null
  return {
    ground: [
      drawGround(hole, map, sheet),
      ...(options.values === undefined ? [] : [drawValues(options.values, sheet)]),
      ...insideFrame(sheet, [drawLine(hole, sheet, ruler, numbers), ...(figures === null ? [] : [figures])]),
    ],
    furniture: [
      ...(title === null ? [] : [titleBlock(hole, title, ruler, options)]),
      ...(compass === null
        ? []
        : [
            {
              kind: 'group',
              name: 'compass',
              shapes: drawCompass(hole, [compass.x, compass.y], options.wind),
            } as const,
          ]),
      ...drawFrame(sheet, ruler),
      ...(options.credit === undefined ? [] : [creditLine(options.credit, sheet)]),
    ],
  }
}

/** Of a part of a hole the line and the figures go on beyond the frame: they are cut to it. */
function insideFrame(sheet: Sheet, shapes: readonly Shape[]): readonly Shape[] {
  if (!sheet.isEnlarged) return shapes
  const { left, top, right, bottom } = sheet.frame
  return [{ kind: 'group', clip: rectangleSteps(left, top, right - left, bottom - top), shapes }]
}

/** The middle of a figure, near enough for keeping clear of it. */
function middleOf({ at, anchor, text, size }: TextShape): Point {
  const half = text.length * size * 0.27
  const aside = anchor === 'end' ? -half : anchor === 'middle' ? 0 : half
  return [at[0] + aside, at[1] - size * 0.35]
}

function titleBlock(hole: Hole, at: Block, ruler: Ruler, options: HoleDrawingOptions): GroupShape {
  const { x, y, width, height } = at
  return {
    kind: 'group',
    name: 'title',
    shapes: [
      { kind: 'path', steps: rectangleSteps(x, y, width, height), fill: 'paper' },
      ...drawTitle(hole, [x, y], ruler, options),
    ],
  }
}

function creditLine(text: string, sheet: Sheet): Shape {
  return {
    kind: 'text',
    text,
    at: [sheet.frame.right + 5, sheet.height - 7],
    size: 8.5,
    paint: 'ink',
    face: 'serif-italic',
    anchor: 'end',
  }
}

/** The player's own marks, which change with every drag: arcs, pattern and aim, cut to the frame. */
export function drawMarks(sheet: Sheet, options: HoleDrawingOptions): GroupShape {
  const { left, top, right, bottom } = sheet.frame
  const { aim, arcs, measured, moved, pattern, relief, units } = options
  return {
    kind: 'group',
    name: 'marks',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes: [
      ...(moved === undefined ? [] : [drawMoved(moved, sheet)]),
      ...(arcs === undefined
        ? []
        : [drawCarryArcs(arcs, aim?.from ?? [0, 0], aim?.headingDegrees ?? 0, sheet, rulerOf(units))]),
      ...(pattern === undefined ? [] : [drawPattern(pattern, sheet)]),
      ...(aim === undefined ? [] : [drawAim(aim, sheet)]),
      ...(relief === undefined ? [] : [drawReliefMarks(relief.of, sheet, relief.pin)]),
      ...(measured === undefined ? [] : [drawMeasured(measured, sheet, rulerOf(units))]),
    ],
  }
}
