import { describe, expect, it } from 'vitest'
import { contourLines, type Field } from './contour-lines.ts'

/** A field of a formula over −10…10 in both directions. */
function field(of: (x: number, y: number) => number, resolution = 0.5): Field {
  const columns = Math.round(20 / resolution) + 1
  const values = Float64Array.from({ length: columns * columns }, (_, index) =>
    of(-10 + (index % columns) * resolution, -10 + Math.floor(index / columns) * resolution),
  )
  return { originX: -10, originY: -10, resolution, columns, rows: columns, values }
}

describe('contourLines', () => {
  it('follows a circle: the level line of a distance is closed and at that distance', () => {
    const lines = contourLines(
      field((x, y) => Math.hypot(x, y)),
      6,
    )
    expect(lines).toHaveLength(1)
    expect(lines[0]!.isClosed).toBe(true)
    // Linear interpolation of a cone errs by at most resolution² / 8 / radius.
    for (const [x, y] of lines[0]!.points)
      expect(Math.abs(Math.hypot(x, y) - 6)).toBeLessThan(0.25 / 8 / 6 + 1e-9)
  })

  it('is exact and open on a plane', () => {
    const lines = contourLines(
      field((x, y) => 2 * x + y),
      1.3,
    )
    expect(lines).toHaveLength(1)
    expect(lines[0]!.isClosed).toBe(false)
    for (const [x, y] of lines[0]!.points) expect(2 * x + y).toBeCloseTo(1.3, 9)
  })

  it('keeps two hills apart, and joins them over a saddle by the mean of its corners', () => {
    const hills = field(
      (x, y) => Math.exp(-((x - 4) ** 2 + y * y) / 4) + Math.exp(-((x + 4) ** 2 + y * y) / 4),
    )
    expect(contourLines(hills, 0.5)).toHaveLength(2)
    expect(contourLines(hills, 0.01)).toHaveLength(1)
  })

  it('leaves out what is not known, and draws nothing outside the values', () => {
    expect(
      contourLines(
        field((x) => (x < 0 ? Number.NaN : x)),
        5,
      )[0]!.points.every(([x]) => x >= 0),
    ).toBe(true)
    expect(
      contourLines(
        field((x) => x),
        50,
      ),
    ).toEqual([])
  })
})
