import { describe, expect, it } from 'vitest'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { nearestEdge } from './nearest-edge.ts'
import { offsetPolygon } from './offset-polygon.ts'
import type { Point, Polygon } from './point.ts'
import { polygonArea, polygonContains } from './polygon.ts'

const FIELD: Polygon = [
  [
    [0, 0],
    [30, 0],
    [30, 20],
    [0, 20],
  ],
]

describe('offsetPolygon', () => {
  it('grows a convex polygon by perimeter and arc (Steiner: A + P·d + π·d²)', () => {
    const [grown] = offsetPolygon(FIELD, 5)
    const exact = 600 + 100 * 5 + Math.PI * 25
    // The chords of a full turn of arc at most 2 mm inside it: two thirds of 2 mm on average round 2π · 5 m.
    expect(polygonArea(grown!)).toBeLessThanOrEqual(exact + 1e-4)
    expect(polygonArea(grown!)).toBeGreaterThan(exact - (2 / 3) * 0.002 * 10 * Math.PI - 1e-4)
  })

  it('shrinks a rectangle exactly, and to nothing', () => {
    const [shrunk] = offsetPolygon(FIELD, -4)
    expect(polygonArea(shrunk!)).toBeCloseTo(22 * 12, 5)
    expect(offsetPolygon(FIELD, -11)).toEqual([])
  })

  it('keeps a polygon as it is at 0, cleaned by the even-odd rule, and an empty one empty', () => {
    expect(offsetPolygon(FIELD, 0).map(polygonArea)).toEqual([600])
    const bowTie: Polygon = [
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
    ]
    expect(offsetPolygon(bowTie, 0).map(polygonArea)).toEqual([4, 4])
    expect(offsetPolygon([], 3)).toEqual([])
  })

  it('shrinks a hole when it grows, and falls apart at a waist', () => {
    const withHole: Polygon = [
      ...FIELD,
      [
        [10, 8],
        [20, 8],
        [20, 12],
        [10, 12],
      ],
    ]
    const [grown] = offsetPolygon(withHole, 1)
    expect(grown).toHaveLength(2)
    expect(polygonArea([grown![1]!])).toBeCloseTo(8 * 2, 5)
    const waisted: Polygon = [
      [
        [0, 0],
        [10, 4],
        [20, 0],
        [20, 10],
        [10, 6],
        [0, 10],
      ],
    ]
    expect(offsetPolygon(waisted, -1.5)).toHaveLength(2)
  })

  it('holds exactly the points within the distance', () => {
    const random = seededGenerator(31)
    const shape: Polygon = [
      [
        [0, 0],
        [40, 5],
        [25, 20],
        [35, 40],
        [5, 30],
      ],
    ]
    for (const metres of [-3, 4]) {
      const result = offsetPolygon(shape, metres)
      for (let i = 0; i < 3000; i++) {
        const point: Point = [70 * random() - 15, 70 * random() - 15]
        const away = nearestEdge(shape, point).distance
        const height = polygonContains(shape, point) ? -away : away
        if (Math.abs(height - metres) < 0.0025) continue
        expect(result.some((polygon) => polygonContains(polygon, point))).toBe(height < metres)
      }
    }
  })
})
