import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type MixturePart, mixtureCdf, mixturePdf, mixtureQuantile } from './mixture.ts'
import { normalCdf, normalQuantile } from './normal.ts'

const good: MixturePart = { weight: 0.83, centre: 162.8, leftSd: 12, rightSd: 12 }
const mishit: MixturePart = { weight: 0.17, centre: 90, leftSd: 30, rightSd: 22 }
const mean = (part: MixturePart): number =>
  part.centre + Math.sqrt(2 / Math.PI) * (part.rightSd - part.leftSd)

describe('mixture', () => {
  it('of one plain normal is that normal', () => {
    for (const u of [0.001, 0.2, 0.5, 0.97]) {
      expect(mixtureQuantile([good], u)).toBeCloseTo(162.8 + 12 * normalQuantile(u), 10)
      expect(mixtureCdf([good], 162.8 + 12 * normalQuantile(u))).toBeCloseTo(u, 13)
    }
  })

  it('has the weighted sum of two normals as its distribution, whatever the weights add up to', () => {
    const parts = [good, { ...mishit, leftSd: 30, rightSd: 30 }]
    const expected = 0.83 * normalCdf((130 - 162.8) / 12) + 0.17 * normalCdf((130 - 90) / 30)
    expect(mixtureCdf(parts, 130)).toBeCloseTo(expected, 14)
    expect(
      mixtureCdf(
        parts.map((part) => ({ ...part, weight: 7 * part.weight })),
        130,
      ),
    ).toBeCloseTo(expected, 14)
  })

  it('goes there and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (u) => {
        expect(mixtureCdf([good, mishit], mixtureQuantile([good, mishit], u))).toBeCloseTo(u, 12)
      }),
    )
    expect([mixtureQuantile([good, mishit], 0), mixtureQuantile([good, mishit], 1)]).toEqual([
      -Infinity,
      Infinity,
    ])
  })

  it('has a density of total 1 and of the mean of the parts’ means', () => {
    let total = 0
    let first = 0
    for (let x = -200; x <= 400; x += 0.05) {
      const density = mixturePdf([good, mishit], x)
      total += density * 0.05
      first += density * x * 0.05
    }
    expect(total).toBeCloseTo(1, 6)
    expect(first).toBeCloseTo(0.83 * mean(good) + 0.17 * mean(mishit), 3)
  })
})
