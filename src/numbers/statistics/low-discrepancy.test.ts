import { describe, expect, it } from 'vitest'
import { lowDiscrepancyPoints } from './low-discrepancy.ts'
import { normalCdf, normalQuantile } from './normal.ts'
import { seededGenerator } from './seeded-generator.ts'

type Integrand = (u: number, v: number) => number

function average(points: Float64Array, integrand: Integrand): number {
  let sum = 0
  for (let i = 0; i < points.length; i += 2) sum += integrand(points[i]!, points[i + 1]!)
  return (2 * sum) / points.length
}

const gauss =
  (f: Integrand): Integrand =>
  (u, v) =>
    f(normalQuantile(u), normalQuantile(v))

// Integrals over the unit square, or over two independent standard normals, in closed form.
const CLOSED_FORMS: [name: string, integrand: Integrand, exact: number][] = [
  ['u·v²', (u, v) => u * v * v, 1 / 6],
  ['exp(u + v)', (u, v) => Math.exp(u + v), (Math.E - 1) ** 2],
  ['a quarter disc', (u, v) => (u * u + v * v < 1 ? 1 : 0), Math.PI / 4],
  ['the variance of z', gauss((_, z) => z * z), 1],
  ['a log-normal mean', gauss((x, z) => Math.exp(0.3 * x + 0.5 * z)), Math.exp(0.17)],
  [
    'the chance of missing a corner',
    gauss((x, z) => (x > 0.8 && z < 0.3 ? 1 : 0)),
    normalCdf(-0.8) * normalCdf(0.3),
  ],
  ['the chance inside a circle', gauss((x, z) => (x * x + z * z < 2 ? 1 : 0)), 1 - Math.exp(-1)],
]

describe('lowDiscrepancyPoints', () => {
  // Bounds a little above the largest of the seven errors as measured: 0.039, 0.0100, 0.0026 and 0.0008.
  it.each(CLOSED_FORMS)(
    'integrates %s with an error that falls with the number of points',
    (_, integrand, exact) => {
      const error = (count: number): number =>
        Math.abs(average(lowDiscrepancyPoints(count), integrand) - exact)
      expect(error(64)).toBeLessThan(0.04)
      expect(error(256)).toBeLessThan(0.0105)
      expect(error(1024)).toBeLessThan(0.0027)
      expect(error(4096)).toBeLessThan(0.0009)
    },
  )

  it('does much better than as many random points', () => {
    const random = seededGenerator(41)
    const squares = CLOSED_FORMS.map(([, integrand, exact]) => {
      let sum = 0
      for (let round = 0; round < 50; round++)
        sum += (average(Float64Array.from({ length: 512 }, random), integrand) - exact) ** 2 / 50
      return [(average(lowDiscrepancyPoints(256), integrand) - exact) ** 2, sum] as const
    })
    for (const [ours, randoms] of squares) expect(Math.sqrt(ours / randoms)).toBeLessThan(0.5)
  })

  it.each([1, 2, 7, 64, 513])('has %i points strictly inside, its own mirror image in u', (count) => {
    const points = lowDiscrepancyPoints(count)
    expect(points).toHaveLength(2 * count)
    expect(points.every((value) => value > 0 && value < 1)).toBe(true)
    for (let i = 0; i < count; i++) {
      const j = count - 1 - i
      expect(points[2 * i]! + points[2 * j]!).toBeCloseTo(1, 15)
      expect(points[2 * i + 1]).toBe(points[2 * j + 1])
      expect(points[2 * i]).toBeCloseTo((i + 0.5) / count, 15)
    }
  })
})
