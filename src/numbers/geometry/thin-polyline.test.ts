import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Point } from './point.ts'
import { projectOnPolyline } from './polyline.ts'
import { thinPolyline } from './thin-polyline.ts'

it('keeps the corner of a line and lets go of what lies on its legs', () => {
  expect(
    thinPolyline(
      [
        [0, 0],
        [1, 0.1],
        [2, -0.1],
        [3, 5],
        [4, 6],
        [5, 7],
        [6, 8.1],
        [7, 9],
      ] as Point[],
      1,
    ),
  ).toEqual([
    [0, 0],
    [2, -0.1],
    [3, 5],
    [7, 9],
  ])
  expect(thinPolyline([], 1)).toEqual([])
  expect(thinPolyline([[2, 3]], 1)).toEqual([[2, 3]])
})

it('leaves out no point further away than it may, keeps both ends, and has nothing left to thin', () => {
  const coordinate = fc.double({ min: -100, max: 100, noNaN: true })
  fc.assert(
    fc.property(
      fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 60 }),
      fc.double({ min: 0.1, max: 30, noNaN: true }),
      (line, tolerance) => {
        const thinned = thinPolyline(line, tolerance)
        expect([thinned[0], thinned.at(-1)]).toEqual([line[0], line.at(-1)])
        for (const point of line)
          expect(projectOnPolyline(thinned, point).distance).toBeLessThanOrEqual(tolerance + 1e-9)
        expect(thinPolyline(thinned, tolerance)).toEqual(thinned)
      },
    ),
  )
})

it('thins a walk of 100,000 places along a circle', () => {
  const walk = Array.from({ length: 100_001 }, (_, step): Point => {
    const angle = (step / 100_000) * 2 * Math.PI
    return [50 * Math.cos(angle), 50 * Math.sin(angle)]
  })
  // A chord whose middle lies 1 m inside a circle of 50 m spans 2 arccos(49/50): 16 or more make a circle.
  const corners = thinPolyline(walk, 1).length
  expect(corners).toBeGreaterThanOrEqual(16)
  expect(corners).toBeLessThanOrEqual(33)
})
