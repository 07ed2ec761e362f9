import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { monotoneCubic } from './monotone-cubic.ts'

const UNEVEN: readonly (readonly [number, number])[] = [
  [-5, 290],
  [0, 250],
  [2.5, 240],
  [9, 220],
  [16.5, 204],
  [26, 187],
  [54, 145],
]

describe('monotoneCubic', () => {
  it('agrees with a second implementation of the same curve (scipy 1.17, PchipInterpolator)', () => {
    for (const [at, value] of [
      [-4, 279.83619],
      [-1, 255.744762],
      [1, 245.479803],
      [5, 231.53957],
      [12, 213.041149],
      [20, 197.399744],
      [30, 180.435793],
      [45, 157.298128],
    ] as const)
      expect(monotoneCubic(UNEVEN, at)).toBeCloseTo(value, 5)
  })

  it('passes through its knots, is flat outside, and straight where they are', () => {
    for (const [at, value] of UNEVEN) expect(monotoneCubic(UNEVEN, at)).toBe(value)
    expect([monotoneCubic(UNEVEN, -9), monotoneCubic(UNEVEN, 99)]).toEqual([290, 145])
    const line = [0, 1, 4, 6].map((x) => [x, 3 - 2 * x] as const)
    for (const at of [0.3, 2, 5.5]) expect(monotoneCubic(line, at)).toBeCloseTo(3 - 2 * at, 12)
    expect(monotoneCubic(line.slice(0, 2), 0.5)).toBeCloseTo(2, 12)
  })

  it('neither turns nor kinks between rising knots, whatever they are', () => {
    const steps = fc.array(
      fc.tuple(fc.double({ min: 0.5, max: 9, noNaN: true }), fc.double({ min: 0.01, max: 9, noNaN: true })),
      {
        minLength: 3,
        maxLength: 8,
      },
    )
    fc.assert(
      fc.property(steps, (gaps) => {
        const sum = (of: number, upTo: number): number =>
          gaps.slice(0, upTo + 1).reduce((total, gap) => total + (gap[of] ?? 0), 0)
        const knots = gaps.map((_, index) => [sum(0, index), sum(1, index)] as const)
        const [from, to] = [sum(0, 0), sum(0, gaps.length)]
        const h = (to - from) / 4000
        for (const [at] of knots.slice(1, -1)) {
          const left = (monotoneCubic(knots, at) - monotoneCubic(knots, at - 1e-7)) / 1e-7
          const right = (monotoneCubic(knots, at + 1e-7) - monotoneCubic(knots, at)) / 1e-7
          expect(Math.abs(left - right)).toBeLessThan(1e-3 * (1 + left) + 1e-3)
        }
        for (let at = from; at < to; at += 40 * h)
          expect(monotoneCubic(knots, at + h)).toBeGreaterThanOrEqual(monotoneCubic(knots, at) - 1e-12)
      }),
      { numRuns: 50 },
    )
  })
})
