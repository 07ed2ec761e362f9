import type { Point } from '#numbers/geometry/point.ts'
import type { GroupShape, Shape, Step } from './drawing.ts'
import { DRAW_SETTINGS } from './settings.ts'
import type { Sheet } from './sheet.ts'
import { circleSteps, lineSteps, rectangleSteps } from './steps.ts'

/** A shot that was put down on a chart. */
export interface TappedMark {
  /** In the frame of the sheet, metres. */
  readonly at: Point
  readonly isMishit: boolean
  /** Put down last: ringed. */
  readonly isLast: boolean
}

/** Shots as they came down, in ink over the pattern: a dot each, a cross for a mishit, a ring about the last. */
export function drawTapped(marks: readonly TappedMark[], sheet: Sheet): GroupShape {
  const { left, top, right, bottom } = sheet.frame
  const shapes = marks.flatMap(({ at, isMishit, isLast }): Shape[] => {
    const [x, y] = sheet.toSheet(at)
    return [
      ...(isMishit ? crossMark(x, y) : [dotMark(x, y)]),
      ...(isLast
        ? [
            {
              kind: 'path',
              steps: circleSteps([x, y], 8),
              stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
            } as const,
          ]
        : []),
    ]
  })
  return {
    kind: 'group',
    name: 'tapped',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes,
  }
}

function dotMark(x: number, y: number): Shape {
  return {
    kind: 'path',
    steps: circleSteps([x, y], 3.4),
    fill: 'ink',
    stroke: { paint: 'paper', width: 1.4 },
  }
}

function crossMark(x: number, y: number): Shape[] {
  const steps: Step[] = [
    ...lineSteps([x - 4, y - 4], [x + 4, y + 4]),
    ...lineSteps([x - 4, y + 4], [x + 4, y - 4]),
  ]
  return [
    { kind: 'path', steps, stroke: { paint: 'paper', width: 4.6, cap: 'round' } },
    { kind: 'path', steps, stroke: { paint: 'ink', width: 2, cap: 'round' } },
  ]
}

/** Where the next shot would be put down: a cross in the spot colour with its lines to the scales. */
export function drawCross(at: Point, sheet: Sheet): GroupShape {
  const { left, top, right, bottom } = sheet.frame
  const [x, y] = sheet.toSheet(at)
  return {
    kind: 'group',
    name: 'cross',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes: [
      {
        kind: 'path',
        steps: [...lineSteps([left, y], [x - 14, y]), ...lineSteps([x, y + 14], [x, bottom])],
        stroke: { paint: 'spot', width: DRAW_SETTINGS.hairline, dash: [3, 3] },
      },
      {
        kind: 'path',
        steps: [
          ...lineSteps([x - 14, y], [x - 4, y]),
          ...lineSteps([x + 4, y], [x + 14, y]),
          ...lineSteps([x, y - 14], [x, y - 4]),
          ...lineSteps([x, y + 4], [x, y + 14]),
        ],
        stroke: { paint: 'spot', width: DRAW_SETTINGS.heavyLine },
      },
    ],
  }
}
