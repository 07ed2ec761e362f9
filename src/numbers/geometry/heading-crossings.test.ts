import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { headingCrossings } from './heading-crossings.ts'
import { nearestEdge } from './nearest-edge.ts'
import type { Polygon } from './point.ts'
import { polygonContains } from './polygon.ts'

const RING: Polygon = [
  [
    [-10, 100],
    [10, 100],
    [10, 120],
    [-10, 120],
  ],
  [
    [-2, 105],
    [2, 105],
    [2, 110],
    [-2, 110],
  ],
]

describe('headingCrossings', () => {
  it('gives the way in and out, and in and out of a hole', () => {
    expect(headingCrossings(RING, [0, 0], 0)).toEqual([100, 105, 110, 120])
    expect(headingCrossings(RING, [5, 0], 0)).toEqual([100, 120])
    expect(headingCrossings(RING, [0, 0], Math.PI)).toEqual([])
    const [first] = headingCrossings(RING, [-50, 115], Math.PI / 2)
    expect(first).toBeCloseTo(40, 12)
  })

  it('has an odd number exactly when the walk starts inside, and changes between in and out at each', () => {
    const coordinate = fc.double({ min: -15, max: 15, noNaN: true })
    const heading = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true })
    fc.assert(
      fc.property(coordinate, coordinate, heading, (x, y, h) => {
        fc.pre(nearestEdge(RING, [x, y + 110]).distance > 1e-6)
        const crossings = headingCrossings(RING, [x, y + 110], h)
        let isInside = polygonContains(RING, [x, y + 110])
        expect(crossings.length % 2 === 1).toBe(isInside)
        crossings.forEach((metres, i) => {
          isInside = !isInside
          const middle = (metres + (crossings[i + 1] ?? metres + 100)) / 2
          const place = [x + middle * Math.sin(h), y + 110 + middle * Math.cos(h)] as const
          if (nearestEdge(RING, place).distance > 1e-6) expect(polygonContains(RING, place)).toBe(isInside)
        })
      }),
    )
  })
})
