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
