import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { distance, type Point } from './point.ts'
import { pointAlong, polylineLength, projectOnPolyline } from './polyline.ts'

const DOGLEG: Point[] = [
  [0, 0],
  [0, 200],
  [100, 300],
]
const metres = fc.double({ min: -500, max: 500, noNaN: true })
const point: fc.Arbitrary<Point> = fc.tuple(metres, metres)
const line = fc.array(point, { minLength: 2, maxLength: 6 })

describe('polylineLength and pointAlong', () => {
  it('measures along the bend', () => {
    expect(polylineLength(DOGLEG)).toBeCloseTo(200 + 100 * Math.SQRT2, 12)
    expect(pointAlong(DOGLEG, 150)).toEqual([0, 150])
    const past = pointAlong(DOGLEG, 200 + 50 * Math.SQRT2)
    expect(past[0]).toBeCloseTo(50, 12)
    expect(past[1]).toBeCloseTo(250, 12)
  })

  it('stays on the line at its ends', () => {
    expect(pointAlong(DOGLEG, -5)).toEqual([0, 0])
    expect(pointAlong(DOGLEG, 1000)).toEqual([100, 300])
  })
})

describe('projectOnPolyline', () => {
  it('tells right from left on either leg', () => {
    expect(projectOnPolyline(DOGLEG, [20, 100])).toEqual({ along: 100, offset: 20, distance: 20 })
    expect(projectOnPolyline(DOGLEG, [-20, 100]).offset).toBe(-20)
    const right = projectOnPolyline(DOGLEG, [60, 240])
    expect(right.offset).toBeCloseTo(10 * Math.SQRT2, 12)
    expect(right.along).toBeCloseTo(200 + 50 * Math.SQRT2, 12)
  })

  it('takes the whole distance as offset outside a bend and the square part past an end', () => {
    const outside = projectOnPolyline(DOGLEG, [-4, 203])
    expect(outside).toEqual({ along: 200, offset: -5, distance: 5 })
    const behind = projectOnPolyline(DOGLEG, [4, -3])
    expect(behind).toEqual({ along: 0, offset: 4, distance: 5 })
  })

  it('finds a point of the line again', () => {
    fc.assert(
      fc.property(line, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
        const there = pointAlong(points, share * polylineLength(points))
        const seen = projectOnPolyline(points, there)
        expect(seen.distance).toBeLessThan(1e-9)
        expect(distance(pointAlong(points, seen.along), there)).toBeLessThan(1e-9)
      }),
    )
  })

  it('is never further than any sampled point of the line', () => {
    fc.assert(
      fc.property(line, point, (points, from) => {
        const seen = projectOnPolyline(points, from)
        const length = polylineLength(points)
        for (let i = 0; i <= 60; i++)
          expect(seen.distance).toBeLessThanOrEqual(
            distance(pointAlong(points, (length * i) / 60), from) + 1e-9,
          )
        expect(distance(pointAlong(points, seen.along), from)).toBeCloseTo(seen.distance, 6)
        expect(Math.abs(seen.offset)).toBeLessThanOrEqual(seen.distance + 1e-9)
      }),
    )
  })

  it('changes only the sign of the offset when the plane is mirrored', () => {
    fc.assert(
      fc.property(line, point, (points, from) => {
        const seen = projectOnPolyline(points, from)
        const mirrored = projectOnPolyline(
          points.map(([x, y]) => [-x, y] as const),
          [-from[0], from[1]],
        )
        expect(mirrored.along).toBeCloseTo(seen.along, 9)
        expect(mirrored.offset).toBeCloseTo(-seen.offset, 9)
      }),
    )
  })
})
