import { describe, expect, it } from 'vitest'
import { polygonArea } from '#numbers/geometry/polygon.ts'
import { lineStrip } from './line-strip.ts'

describe('lineStrip', () => {
  it('is a rectangle along a straight line', () => {
    const strip = lineStrip(
      [
        [0, 0],
        [0, 100],
      ],
      3,
    )!
    expect(polygonArea([strip])).toBeCloseTo(300, 9)
    expect(strip).toContainEqual([1.5, 0])
    expect(strip).toContainEqual([-1.5, 100])
  })

  it('keeps its width round a corner: area = length × width where both sides mitre', () => {
    // The mitre takes off inside what it adds outside.
    const strip = lineStrip(
      [
        [0, 0],
        [0, 100],
        [100, 100],
      ],
      4,
    )!
    expect(polygonArea([strip])).toBeCloseTo(800, 9)
  })

  it('is nothing for a line without length', () => {
    expect(
      lineStrip(
        [
          [5, 5],
          [5, 5],
        ],
        2,
      ),
    ).toBeNull()
  })

  it('does not reach far out where the line turns straight back', () => {
    const strip = lineStrip(
      [
        [0, 0],
        [0, 100],
        [0.01, 0],
      ],
      2,
    )!
    for (const [x, y] of strip) {
      expect(Math.abs(x)).toBeLessThan(3)
      expect(y).toBeLessThan(103)
    }
  })
})
