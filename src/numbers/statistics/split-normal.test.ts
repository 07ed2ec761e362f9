import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalCdf, normalPdf, normalQuantile } from './normal.ts'
import { splitNormalCdf, splitNormalPdf, splitNormalQuantile } from './split-normal.ts'

const sd = fc.double({ min: 0.01, max: 20, noNaN: true })
const share = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true })

describe('split normal', () => {
  it('is the plain normal when both sides are alike', () => {
    for (let x = -4; x <= 4; x += 0.5) {
      expect(splitNormalPdf(x, 2, 2)).toBeCloseTo(normalPdf(x / 2) / 2, 15)
      expect(splitNormalCdf(x, 2, 2)).toBeCloseTo(normalCdf(x / 2), 14)
    }
    for (const u of [0.01, 0.3, 0.5, 0.9])
      expect(splitNormalQuantile(u, 2, 2)).toBeCloseTo(2 * normalQuantile(u), 12)
  })

  it('goes there and back, and mirrors', () => {
    fc.assert(
      fc.property(share, sd, sd, (u, left, right) => {
        const x = splitNormalQuantile(u, left, right)
        expect(splitNormalCdf(x, left, right)).toBeCloseTo(u, 12)
        expect(splitNormalQuantile(1 - u, right, left)).toBeCloseTo(-x, 8)
      }),
    )
  })

  // Moments in closed form: Johnson, Kotz and Balakrishnan (1994), section 13.10.
  it('has the published mean and variance', () => {
    for (const [left, right] of [
      [1, 1],
      [1, 3],
      [4, 0.5],
      [2, 0],
    ] as const) {
      let mean = 0
      let square = 0
      const count = 400_000
      for (let i = 0; i < count; i++) {
        const x = splitNormalQuantile((i + 0.5) / count, left, right)
        mean += x / count
        square += (x * x) / count
      }
      const exactMean = Math.sqrt(2 / Math.PI) * (right - left)
      expect(mean).toBeCloseTo(exactMean, 4)
      expect(square - mean * mean).toBeCloseTo((1 - 2 / Math.PI) * (right - left) ** 2 + left * right, 2)
    }
  })

  it('has the density as the slope of the distribution', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), sd, sd, (z, left, right) => {
        const x = z * (z < 0 ? left : right)
        const step = 1e-5 * Math.min(left, right)
        const slope =
          (splitNormalCdf(x + step, left, right) - splitNormalCdf(x - step, left, right)) / (2 * step)
        expect(splitNormalPdf(x, left, right) * (left + right)).toBeCloseTo(slope * (left + right), 4)
      }),
    )
  })

  it('may have no spread on one side or on both', () => {
    expect(splitNormalQuantile(0.3, 0, 0)).toBe(0)
    expect(splitNormalQuantile(0.3, 0, 2)).toBeCloseTo(-2 * normalQuantile(0.35), 12)
    expect(splitNormalCdf(-1, 0, 2)).toBe(0)
    expect(splitNormalCdf(0.1, 2, 0)).toBe(1)
    expect([splitNormalCdf(-0.1, 0, 0), splitNormalCdf(0, 0, 0)]).toEqual([0, 1])
    expect(splitNormalPdf(1, 2, 0)).toBe(0)
  })
})
