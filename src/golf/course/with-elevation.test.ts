import { describe, expect, it } from 'vitest'
import type { ElevationGrid } from './elevation-grid.ts'
import { area, course, rectangle, tee } from './invented-course.fixture.ts'
import { withElevation } from './with-elevation.ts'

// On a plane at 0° N 0° E a degree is about 111 km: the grid rises a metre a thousandth of a degree to the north.
const grid: ElevationGrid = {
  heightAt: (longitude, latitude) => (longitude < -0.001 ? null : 50 + latitude * 1000),
  cellMetres: 10,
  emptyCells: 0,
  source: 'heights.tif',
}
const codes = (faults: readonly { code: string }[]): string[] => faults.map(({ code }) => code)

describe('withElevation', () => {
  it('gives tees and greens the height of the grid, a green at its middle, and nothing else', () => {
    const before = course({
      tees: [tee('t', 'white', [0, 0])],
      areas: [
        area('g', 'green', rectangle(-10, 290, 10, 310)),
        area('b', 'bunker', rectangle(20, 290, 30, 300)),
      ],
      source: 'map.osm',
    })
    const { course: after, filled, faults } = withElevation(before, grid)
    expect(after.tees[0]?.elevationMetres).toBe(50)
    // 300 m of latitude at the equator are 300 / 110574.3 degrees (WGS 84).
    expect(after.areas[0]?.elevationMetres).toBeCloseTo(50 + 300 / 110.5743, 2)
    expect(after.areas[1]).toBe(before.areas[1])
    expect(filled).toEqual({ tees: 1, greens: 1 })
    expect(after.source).toBe('map.osm; heights: heights.tif')
    expect(faults).toEqual([])
  })

  it('never changes a height that was there, and says that two zeros may be mixed', () => {
    const before = course({
      tees: [tee('typed', 'white', [0, 0], { elevationMetres: 3.25 }), tee('open', 'red', [0, 50])],
    })
    const { course: after, faults } = withElevation(before, grid)
    expect(after.tees[0]).toBe(before.tees[0])
    expect(after.tees[1]?.elevationMetres).toBeCloseTo(50.45, 2)
    expect(codes(faults)).toEqual(['MAR-ELEV-010'])
    // Again: everything is typed now, so nothing is left to say.
    const again = withElevation(after, grid)
    expect(again.course).toBe(after)
    expect(again.faults).toEqual([])
  })

  it('notes a coarse grid, each place without a height, and a grid of somewhere else', () => {
    const tees = [tee('near', 'white', [0, 0]), tee('far', 'white', [-500, 0])]
    const coarse = withElevation(course({ tees }), { ...grid, cellMetres: 92.7, emptyCells: 4 })
    expect(codes(coarse.faults)).toEqual(['MAR-ELEV-008', 'MAR-ELEV-009'])
    expect(coarse.faults[1]).toMatchObject({ severity: 'note', place: 'far' })
    expect(coarse.course.tees[1]?.elevationMetres).toBeNull()
    const elsewhere = withElevation(course({ tees }), { ...grid, heightAt: () => null })
    expect(codes(elsewhere.faults)).toEqual(['MAR-ELEV-011'])
    expect(elsewhere.filled).toEqual({ tees: 0, greens: 0 })
  })
})
