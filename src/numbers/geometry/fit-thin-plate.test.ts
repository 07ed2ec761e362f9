import { describe, expect, it } from 'vitest'
import { fitThinPlate } from './fit-thin-plate.ts'
import { solveLinear } from './linear/solve-linear.ts'
import type { Point } from './point.ts'

const places: readonly Point[] = [
  [3, 1],
  [-4, 6],
  [10, -2],
  [7, 9],
  [0, 0],
]
const heights = [1, -2, 0.5, 3, 0.25]

describe('fitThinPlate', () => {
  it('meets every height without smoothing and comes nearer to the plane with more of it', () => {
    const exact = fitThinPlate(places, heights, 0)
    for (const [k, [x, y]] of places.entries()) expect(exact?.heightAt(x, y)).toBeCloseTo(heights[k] ?? 0, 9)
    const missed = [0.1, 10, 1000].map((smoothing) => {
      const surface = fitThinPlate(places, heights, smoothing)
      return places.reduce(
        (sum, [x, y], k) => sum + ((surface?.heightAt(x, y) ?? 0) - (heights[k] ?? 0)) ** 2,
        0,
      )
    })
    expect(missed[0]).toBeGreaterThan(0)
    expect(missed[1]).toBeGreaterThan(missed[0] ?? 0)
    expect(missed[2]).toBeGreaterThan(missed[1] ?? 0)
  })

  it('is the published thin-plate spline where that has a closed form', () => {
    // Bookstein, “Principal warps: thin-plate splines and the decomposition of deformations” (IEEE TPAMI 11, 1989): a plane
    // and Σ wᵢ U(|p − pᵢ|), U(r) = r² ln r² (there r² log r²), with Σ wᵢ = Σ wᵢ xᵢ = Σ wᵢ yᵢ = 0. On the corners of a square of
    // two with heights 1, −1, 1, −1 the plane is 0 and the weights are ±w: w (U(√8) − 2 U(2)) = 8 w ln 2 = 1.
    const corners: readonly Point[] = [
      [1, 1],
      [-1, 1],
      [-1, -1],
      [1, -1],
    ]
    const bend = (squared: number): number => (squared === 0 ? 0 : squared * Math.log(squared))
    const published = (x: number, y: number): number =>
      corners.reduce((sum, [cx, cy], k) => {
        const away = bend((x - cx) ** 2 + (y - cy) ** 2)
        return sum + (k % 2 === 0 ? away : -away) / (8 * Math.log(2))
      }, 0)
    const surface = fitThinPlate(corners, [1, -1, 1, -1], 0)
    for (const [x, y] of [
      [0.5, 0.5],
      [0.3, -0.8],
      [2, 1.5],
      [0, 0.7],
    ] as const) {
      expect(surface?.heightAt(x, y)).toBeCloseTo(published(x, y), 12)
      const step = 1e-5
      const [riseX, riseY] = surface?.gradientAt(x, y) ?? [Number.NaN, Number.NaN]
      expect(riseX).toBeCloseTo((published(x + step, y) - published(x - step, y)) / (2 * step), 7)
      expect(riseY).toBeCloseTo((published(x, y + step) - published(x, y - step)) / (2 * step), 7)
    }
  })

  it('gives a plane back exactly, whatever the smoothing', () => {
    const plane = (x: number, y: number): number => 4 + 0.025 * x - 0.01 * y
    for (const smoothing of [0, 1, 50]) {
      const surface = fitThinPlate(
        places,
        places.map(([x, y]) => plane(x, y)),
        smoothing,
      )
      expect(surface?.heightAt(20, -30)).toBeCloseTo(plane(20, -30), 10)
      expect(surface?.gradientAt(5, 5)[0]).toBeCloseTo(0.025, 12)
      expect(surface?.gradientAt(5, 5)[1]).toBeCloseTo(-0.01, 12)
    }
  })

  it('is the same surface whatever the places are counted from, and none on a line', () => {
    const far = fitThinPlate(
      places.map(([x, y]): Point => [x + 4000, y - 9000]),
      heights,
      1,
    )
    const near = fitThinPlate(places, heights, 1)
    expect(far?.heightAt(4002, -8995)).toBeCloseTo(near?.heightAt(2, 5) ?? Number.NaN, 9)
    const line: readonly Point[] = [
      [0, 0],
      [1, 1],
      [2, 2],
    ]
    expect(fitThinPlate([[1, 1]], [2], 1)).toBeNull()
    expect(fitThinPlate(line, [0, 1, 0], 0)).toBeNull()
  })
})

describe('solveLinear', () => {
  it('solves by the largest pivot, and says when there is no one solution', () => {
    // x + 2y = 5, 3y + z = 9, 2x − z = −1: x 1, y 2, z 3; the first pivot stands in the last row.
    const solution = solveLinear(Float64Array.of(1, 2, 0, 0, 3, 1, 2, 0, -1), Float64Array.of(5, 9, -1))
    expect([...(solution ?? [])].map((value) => Math.round(value * 1e12) / 1e12)).toEqual([1, 2, 3])
    expect(solveLinear(Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 2))).toBeNull()
  })
})
