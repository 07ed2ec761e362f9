import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { normalCdf, normalPdf, normalQuantile } from './normal.ts'

// Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 26.1: P(x) to 15 decimals.
const TABLE_26_1: [x: number, p: number][] = [
  [0, 0.5],
  [0.5, 0.691462461274013],
  [1, 0.841344746068543],
  [1.5, 0.933192798731142],
  [2, 0.977249868051821],
  [2.5, 0.993790334674224],
  [3, 0.99865010196837],
]
// NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.1: area from 0 to x, five decimals.
const NIST_AREAS: [x: number, area: number][] = [
  [0.25, 0.09871],
  [0.84, 0.29955],
  [1.28, 0.39973],
  [1.64, 0.4495],
  [1.96, 0.475],
  [2.33, 0.4901],
  [3.09, 0.499],
]
// Upper critical values as printed under Student's t at infinite degrees of freedom: NIST/SEMATECH e-Handbook, section 1.3.6.7.2.
const CRITICAL: [p: number, z: number][] = [
  [0.9, 1.282],
  [0.95, 1.645],
  [0.975, 1.96],
  [0.99, 2.326],
  [0.995, 2.576],
  [0.999, 3.09],
]

// Independent and slow: the integral from 0 as its Maclaurin series, for moderate x.
function seriesCdf(x: number): number {
  let term = x
  let sum = x
  for (let n = 1; Math.abs(term) > 1e-18 * Math.abs(sum) && n < 400; n++) {
    term *= (x * x) / (2 * n + 1)
    sum += term
  }
  return 0.5 + normalPdf(x) * sum
}

// Independent for the far tail: Laplace's continued fraction for Mills' ratio, from its far end.
function fractionTail(x: number): number {
  let rest = x
  for (let n = 400; n >= 1; n--) rest = x + n / rest
  return normalPdf(x) / rest
}

describe('normalCdf', () => {
  it.each(TABLE_26_1)('gives the published P(%f)', (x, p) => {
    expect(normalCdf(x)).toBeCloseTo(p, 14)
    expect(normalCdf(-x)).toBeCloseTo(1 - p, 14)
  })

  it.each(NIST_AREAS)('gives the published area from 0 to %f', (x, area) => {
    expect(normalCdf(x) - 0.5).toBeCloseTo(area, 5)
  })

  it('agrees with the series between −6 and 6 and with the continued fraction in the tail', () => {
    for (let x = -6; x <= 6; x += 0.01) expect(Math.abs(normalCdf(x) - seriesCdf(x))).toBeLessThan(2e-15)
    // Steps of an eighth: x² is then exact, so that the check itself loses nothing.
    for (let x = 3; x <= 30; x += 0.125)
      expect(Math.abs(normalCdf(-x) / fractionTail(x) - 1)).toBeLessThan(1e-15)
  })

  it('never falls', () => {
    const value = fc.double({ min: -40, max: 40, noNaN: true })
    fc.assert(
      fc.property(value, value, (a, b) => {
        expect(normalCdf(Math.min(a, b))).toBeLessThanOrEqual(normalCdf(Math.max(a, b)) + 1e-16)
      }),
    )
  })
})

describe('normalQuantile', () => {
  it.each(CRITICAL)('gives the published critical value at %f', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 3)
    expect(normalQuantile(1 - p)).toBeCloseTo(-z, 3)
  })

  // The check values that the algorithm's author printed with it (AS 241, 1988).
  it('gives the author’s own check values', () => {
    expect(normalQuantile(0.25)).toBeCloseTo(-0.6744897501960817, 14)
    expect(normalQuantile(0.001)).toBeCloseTo(-3.090232306167814, 14)
    expect(Math.abs(normalQuantile(1e-20) + 9.262340089798409)).toBeLessThan(1e-14)
  })

  it('undoes normalCdf', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 4, noNaN: true }), (x) => {
        expect(Math.abs(normalQuantile(normalCdf(x)) - x)).toBeLessThan(2e-12)
      }),
    )
  })

  it('knows the ends and refuses what is no probability', () => {
    expect([normalQuantile(0), normalQuantile(1)]).toEqual([-Infinity, Infinity])
    expect(normalQuantile(-0.1)).toBeNaN()
    expect(normalQuantile(Number.NaN)).toBeNaN()
  })
})
