import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { nearestEdge } from './nearest-edge.ts'
import { distance, type Point, type Polygon } from './point.ts'

const POND: Polygon = [
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ],
  [
    [4, 4],
    [6, 4],
    [6, 6],
    [4, 6],
  ],
]
const coordinate = fc.double({ min: -20, max: 30, noNaN: true })

describe('nearestEdge', () => {
  it('finds edges, corners and the edges of holes', () => {
    expect(nearestEdge(POND, [-3, 5])).toEqual({ distance: 3, point: [0, 5] })
    expect(nearestEdge(POND, [13, 14])).toEqual({ distance: 5, point: [10, 10] })
    expect(nearestEdge(POND, [3.5, 5])).toEqual({ distance: 0.5, point: [4, 5] })
    expect(nearestEdge([], [1, 2]).distance).toBe(Infinity)
  })

  it('is never further than any sampled place of the boundary, and its point lies on it', () => {
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const nearest = nearestEdge(POND, [x, y])
        expect(distance(nearest.point, [x, y])).toBeCloseTo(nearest.distance, 12)
        for (const ring of POND)
          ring.forEach((a, i) => {
            const b = ring[(i + 1) % ring.length] as Point
            for (let share = 0; share <= 1; share += 0.05) {
              const place: Point = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]
              expect(nearest.distance).toBeLessThanOrEqual(distance(place, [x, y]) + 1e-12)
            }
          })
        expect(nearestEdge(POND, nearest.point).distance).toBeLessThan(1e-12)
      }),
    )
  })
})
