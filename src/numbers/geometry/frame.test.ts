import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planarFrame } from './frame.ts'
import { distance, type Point } from './point.ts'

const metres = fc.double({ min: -3000, max: 3000, noNaN: true })
const point: fc.Arbitrary<Point> = fc.tuple(metres, metres)
const bearing = fc.double({ min: -7, max: 7, noNaN: true })

describe('planarFrame', () => {
  it('lays y along a bearing taken clockwise from the old y, x to its right', () => {
    const frame = planarFrame([100, 50], Math.PI / 2)
    const [x, y] = frame.toFrame([130, 40])
    expect(y).toBeCloseTo(30, 12)
    expect(x).toBeCloseTo(10, 12)
  })

  it('goes there and back, and keeps distances', () => {
    fc.assert(
      fc.property(point, bearing, point, point, (origin, turn, a, b) => {
        const frame = planarFrame(origin, turn)
        expect(distance(frame.fromFrame(frame.toFrame(a)), a)).toBeLessThan(1e-11)
        expect(distance(frame.toFrame(a), frame.toFrame(b))).toBeCloseTo(distance(a, b), 9)
      }),
    )
  })

  it('has the direction of the bearing as its own y axis', () => {
    fc.assert(
      fc.property(point, bearing, (origin, turn) => {
        const ahead = planarFrame(origin, turn).fromFrame([0, 100])
        expect(
          distance(ahead, [origin[0] + 100 * Math.sin(turn), origin[1] + 100 * Math.cos(turn)]),
        ).toBeLessThan(1e-9)
      }),
    )
  })
})
