import type { Point } from '#numbers/geometry/point.ts'
import type { GroupShape, Shape, Step } from '../draw/drawing.ts'
import { POINTS_PER_INCH, POINTS_PER_MILLIMETRE, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'

/** Height that the two rulers take, and their length with the words, points. */
export const RULERS = { height: 34, width: 200 } as const

/**
 * 50 millimetres and 2 inches along one line, ticks up and down: held against a real ruler they prove that the printer kept
 * the scale. `at` is the left end of the line.
 */
export function rulers([x, y]: Point): GroupShape {
  const millimetres = ticks(50, POINTS_PER_MILLIMETRE, (tick) =>
    tick % 10 === 0 ? 9 : tick % 5 === 0 ? 6 : 4,
  )
  const eighths = ticks(16, POINTS_PER_INCH / 8, (tick) => (tick % 8 === 0 ? 9 : tick % 4 === 0 ? 6 : 4))
  const shapes: Shape[] = [
    { kind: 'path', steps: lines(millimetres, -1), stroke: { paint: 'ink', width: RULE.fine } },
    { kind: 'path', steps: lines(eighths, 1), stroke: { paint: 'ink', width: RULE.fine } },
    {
      kind: 'path',
      steps: [
        ['M', x, y],
        ['L', x + 2 * POINTS_PER_INCH, y],
      ],
      stroke: { paint: 'ink', width: RULE.fine },
    },
    text('50 mm', [x + 50 * POINTS_PER_MILLIMETRE + 5, y - 2], TYPE.small, 'sans'),
    text('2 in', [x + 2 * POINTS_PER_INCH + 5, y + 10], TYPE.small, 'sans'),
  ]
  return { kind: 'group', name: 'rulers', shapes }

  function lines(marks: readonly (readonly [offset: number, length: number])[], way: 1 | -1): Step[] {
    return marks.flatMap(([offset, length]): Step[] => [
      ['M', x + offset, y],
      ['L', x + offset, y + way * length],
    ])
  }
}

function ticks(
  count: number,
  step: number,
  lengthOf: (tick: number) => number,
): (readonly [offset: number, length: number])[] {
  return Array.from({ length: count + 1 }, (_, tick) => [tick * step, lengthOf(tick)])
}
