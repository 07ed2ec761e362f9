import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { planarFrame } from './frame.ts'
import type { Point, Polygon } from './point.ts'
import { polygonArea, polygonBounds, polygonCentroid, polygonContains } from './polygon.ts'

const SQUARE: Polygon = [
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ],
]
const RING: Polygon = [
  ...SQUARE,
  [
    [6, 2],
    [8, 2],
    [8, 4],
    [6, 4],
  ],
]

// A ring that does not cross itself: radii about a middle, in order of angle.
function star(seed: number, corners: number): Polygon {
  const random = seededGenerator(seed)
  return [
    Array.from({ length: corners }, (_, i) => {
      const radius = 20 + 80 * random()
      const angle = (2 * Math.PI * (i + 0.8 * random())) / corners
      return [radius * Math.sin(angle), radius * Math.cos(angle)] as const
    }),
  ]
}

// Brute force by another road: the turns of the direction from the point to the boundary add up to 0 outside.
function turnsAround(ring: readonly Point[], [x, y]: Point): number {
  let turns = 0
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as Point
    const turn = Math.atan2(b[1] - y, b[0] - x) - Math.atan2(a[1] - y, a[0] - x)
    turns += turn > Math.PI ? turn - 2 * Math.PI : turn < -Math.PI ? turn + 2 * Math.PI : turn
  })
  return Math.round(turns / (2 * Math.PI))
}

const seed = fc.integer({ min: 0, max: 1e6 })
const corners = fc.integer({ min: 3, max: 40 })

describe('polygonArea', () => {
  it('knows a square, a square with a hole, and a regular polygon in closed form', () => {
    expect(polygonArea(SQUARE)).toBe(100)
    expect(polygonArea(RING)).toBe(96)
    const regular = Array.from({ length: 17 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 17
      return [5 * Math.sin(angle), 5 * Math.cos(angle)] as const
    })
    expect(polygonArea([regular])).toBeCloseTo((17 / 2) * 25 * Math.sin((2 * Math.PI) / 17), 12)
  })

  it('does not change when the polygon is turned, moved or walked the other way', () => {
    fc.assert(
      fc.property(seed, corners, fc.double({ min: 0, max: 7, noNaN: true }), (s, n, turn) => {
        const polygon = star(s, n)
        const { toFrame } = planarFrame([1234, -987], turn)
        const area = polygonArea(polygon)
        expect(polygonArea(polygon.map((ring) => ring.map(toFrame)))).toBeCloseTo(area, 6)
        expect(polygonArea(polygon.map((ring) => ring.toReversed()))).toBeCloseTo(area, 8)
      }),
    )
  })
})

describe('polygonContains', () => {
  it('agrees with the turns of the boundary around the point', () => {
    fc.assert(
      fc.property(seed, corners, (s, n) => {
        const polygon = star(s, n)
        const random = seededGenerator(s + 1)
        for (let i = 0; i < 50; i++) {
          const point: Point = [random() * 220 - 110, random() * 220 - 110]
          expect(polygonContains(polygon, point)).toBe(turnsAround(polygon[0] as Point[], point) !== 0)
        }
      }),
    )
  })

  it('leaves out holes', () => {
    expect(polygonContains(RING, [7, 3])).toBe(false)
    expect(polygonContains(RING, [5, 3])).toBe(true)
    expect(polygonContains(RING, [11, 3])).toBe(false)
  })

  it('gives every point of a cut line to exactly one of the two halves', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 99.99, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (cut, share) => {
          const low: Point = [cut, 0]
          const high: Point = [100 - cut, 100]
          const left: Polygon = [[[0, 0], low, high, [0, 100]]]
          const right: Polygon = [[low, [100, 0], [100, 100], high]]
          const point: Point = [low[0] + (high[0] - low[0]) * share, 99.9 * share]
          expect(polygonContains(left, point)).not.toBe(polygonContains(right, point))
        },
      ),
    )
  })

  it('counts left and lower edges as inside, right and upper as outside', () => {
    expect([
      polygonContains(SQUARE, [0, 5]),
      polygonContains(SQUARE, [5, 0]),
      polygonContains(SQUARE, [10, 5]),
      polygonContains(SQUARE, [5, 10]),
    ]).toEqual([true, true, false, false])
  })
})

describe('polygonBounds and polygonCentroid', () => {
  it('knows the box', () => {
    expect(polygonBounds(RING)).toEqual({ minX: 0, minY: 0, maxX: 10, maxY: 10 })
  })

  it('knows the centre of a square with a hole, whichever way the rings turn', () => {
    // Moments by hand: (100 · 5 − 4 · 7) / 96 and (100 · 5 − 4 · 3) / 96.
    for (const polygon of [RING, [RING[0] as Point[], (RING[1] as Point[]).toReversed()]]) {
      const [x, y] = polygonCentroid(polygon)
      expect(x).toBeCloseTo(472 / 96, 12)
      expect(y).toBeCloseTo(488 / 96, 12)
    }
    expect(
      polygonCentroid([
        [
          [0, 0],
          [2, 2],
          [4, 4],
        ],
      ]),
    ).toEqual([2, 2])
  })

  it('moves with the polygon', () => {
    fc.assert(
      fc.property(seed, corners, fc.double({ min: 0, max: 7, noNaN: true }), (s, n, turn) => {
        const polygon = star(s, n)
        const { toFrame } = planarFrame([1234, -987], turn)
        const moved = polygonCentroid(polygon.map((ring) => ring.map(toFrame)))
        const expected = toFrame(polygonCentroid(polygon))
        expect(moved[0]).toBeCloseTo(expected[0], 7)
        expect(moved[1]).toBeCloseTo(expected[1], 7)
      }),
    )
  })
})
