import { describe, expect, it } from 'vitest'
import { polygonArea } from '#numbers/geometry/polygon.ts'
import { lowDiscrepancyPoints } from '#numbers/statistics/low-discrepancy.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { contourLines } from '../contour-lines.ts'
import { levelOfShare, patternDensity } from './pattern-density.ts'

/** A round pattern of 4000 finishes with a spread of 10 m about (5, 180). */
function roundPattern() {
  const count = 4000
  const points = lowDiscrepancyPoints(count)
  const x = Float64Array.from({ length: count }, (_, index) => 5 + 10 * normalQuantile(points[2 * index]!))
  const y = Float64Array.from(
    { length: count },
    (_, index) => 180 + 10 * normalQuantile(points[2 * index + 1]!),
  )
  return { club: '7-iron', x, y, weight: new Float64Array(count).fill(1 / count) }
}

describe('patternDensity and levelOfShare', () => {
  // A round normal pattern holds the share p within the radius s·√(−2 ln(1 − p)): the Rayleigh distribution, closed form.
  it.each([0.5, 0.9])('draws the isoline of %f of a round normal pattern at its known radius', (share) => {
    const pattern = roundPattern()
    const density = patternDensity(pattern)
    const [line] = contourLines(density, levelOfShare(density, share))
    const radius = Math.sqrt(Math.abs(polygonArea([line!.points])) / Math.PI)
    // The kernel widens the spread by its own: 1.35 · 4000^(−1/5) = 0.26 of it, together √(1 + 0.26²) = 1.033.
    const widened = 10 * Math.hypot(1, 1.35 * 4000 ** -0.2)
    expect(radius / (widened * Math.sqrt(-2 * Math.log(1 - share)))).toBeCloseTo(1, 1.5)
  })

  it('counts finishes by their weight', () => {
    const near = 20
    const x = Float64Array.from({ length: near + 1 }, (_, index) => (index < near ? index / 2 : 500))
    const y = Float64Array.from({ length: near + 1 }, (_, index) => (index * 7) % 10)
    const weight = Float64Array.from({ length: near + 1 }, (_, index) => (index < near ? 0.8 / near : 0.2))
    const { values, columns, originX, resolution } = patternDensity({ club: 'driver', x, y, weight })
    const sumWhere = (isIn: (place: number) => boolean): number =>
      values.reduce(
        (sum, value, index) => sum + (isIn(originX + (index % columns) * resolution) ? value : 0),
        0,
      )
    const left = sumWhere((place) => place < 250)
    // The kernel is cut off at 3.2 of its widths, which loses 0.1 % of each finish alike; the grid does the rest.
    expect(left / (left + sumWhere((place) => place >= 250))).toBeCloseTo(0.8, 1)
  })
})
