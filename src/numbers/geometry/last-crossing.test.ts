import { describe, expect, it } from 'vitest'
import { lastCrossing } from './last-crossing.ts'
import type { Point, Polygon } from './point.ts'

const square = (x: number, y: number, side: number): Polygon => [
  [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ],
]

describe('lastCrossing', () => {
  it('is where a straight path came in', () => {
    // From (0, 0) to (15, 20) at 0.75 to 1: the lower side y = 10 is met at x = 7.5.
    const point = lastCrossing(
      [
        [0, 0],
        [15, 20],
      ],
      [square(5, 10, 20)],
    )
    expect(point?.[0]).toBeCloseTo(7.5, 12)
    expect(point?.[1]).toBeCloseTo(10, 12)
  })

  it('takes the last way in of a path that goes in, out and in again', () => {
    const path: Point[] = [
      [-5, 5],
      [25, 5],
      [5, 8],
    ]
    // Out over x = 10 and back in there on the second leg: at x = 10 it is 3/4 of the way, y = 5 + 0.75 · 3.
    const point = lastCrossing(path, [square(0, 0, 10)])
    expect(point?.[0]).toBeCloseTo(10, 12)
    expect(point?.[1]).toBeCloseTo(7.25, 12)
  })

  it('does not mind an island, a second pond on the way, or a leg of no length', () => {
    const ring: Polygon = [...square(0, 0, 30), ...square(10, 10, 10)]
    const path: Point[] = [
      [15, 15],
      [15, 25],
      [15, 25],
    ]
    expect(lastCrossing(path, [square(100, 0, 5), ring])?.[1]).toBeCloseTo(20, 12)
  })

  it('is null for a path that never crosses', () => {
    expect(
      lastCrossing(
        [
          [1, 1],
          [2, 2],
        ],
        [square(0, 0, 10)],
      ),
    ).toBeNull()
    expect(lastCrossing([[1, 1]], [square(0, 0, 10)])).toBeNull()
  })
})
