import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { area } from '#golf/course/invented-course.fixture.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { drawSurvey } from '#paper/draw/draw-hole.ts'
import type { Drawing, TextShape } from '#paper/draw/drawing.ts'
import { layOutSheet } from '#paper/draw/sheet.ts'
import { everyGround } from './invented-holes.ts'

/** A square of one class of ground, drawing units. */
export interface Patch {
  readonly ground: Ground
  readonly left: number
  readonly top: number
  readonly side: number
}

/** Side of a patch and the rough between two, metres; two units a metre are a long hole on half a page. */
const SIDE = 32
const GAP = 14
const COLUMNS = 5

/** A square of each class of ground side by side in the rough, drawn as on every hole, with its word below. */
export function groundPatches(): { readonly drawing: Drawing; readonly patches: readonly Patch[] } {
  const corners = GROUND_CLASSES.map(
    (ground, place): { ground: Ground; at: Point } => ({
      ground,
      at: [(place % COLUMNS) * (SIDE + GAP), -Math.floor(place / COLUMNS) * (SIDE + GAP)],
    }),
  )
  const squares = corners.map(({ ground, at: [x, y] }) => ({
    ground,
    polygon: [[[x, y], [x + SIDE, y], [x + SIDE, y + SIDE], [x, y + SIDE]] as const],
  }))
  const hole: Hole = {
    ...everyGround(),
    // Through the middle of every patch: rough is drawn in full only near the line.
    line: corners.map(({ at: [x, y] }): Point => [x + SIDE / 2, y + SIDE / 2]),
    pin: [SIDE / 2, SIDE / 2],
    green: squares.find(({ ground }) => ground === 'green')?.polygon ?? null,
    areas: squares
      .filter(({ ground }) => ground !== 'rough')
      .map(({ ground, polygon }) => area(ground, ground, polygon)),
    trees: [],
  }
  const size = { width: 640, height: 380 }
  const sheet = layOutSheet(hole, size)
  const side = SIDE * sheet.unitsPerMetre
  const patches = corners.map(({ ground, at: [x, y] }): Patch => {
    const [left, top] = sheet.toSheet([x, y + SIDE])
    return { ground, left, top, side }
  })
  const words = patches.map(
    ({ ground, left, top }): TextShape => ({
      kind: 'text',
      text: ground,
      at: [left + side / 2, top + side + 14],
      size: 10,
      paint: 'ink',
      face: 'serif',
      anchor: 'middle',
      halo: 3,
    }),
  )
  const [ground] = drawSurvey(hole, sheet, {}).ground
  return {
    drawing: {
      ...size,
      title: 'Every class of ground',
      description: 'A square of each class of ground in the rough, as it is drawn on every hole.',
      shapes: [...(ground === undefined ? [] : [ground]), ...words],
    },
    patches,
  }
}
