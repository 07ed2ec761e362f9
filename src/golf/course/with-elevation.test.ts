import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { readElevation } from '#outside/formats/read-elevation.ts'
import type { Area, Course } from './course.ts'
import type { ElevationGrid } from './elevation-grid.ts'
import { greenSurface } from './green-surface.ts'
import { greenSurvey, greenSurveySentence } from './green-survey.ts'
import { holeFromCourse } from './hole-from-course.ts'
import { area, course, holeLine, rectangle, tee } from './invented-course.fixture.ts'
import { withElevation } from './with-elevation.ts'

// On a plane at 0° N 0° E a degree is about 111 km: the grid rises a metre a thousandth of a degree to the north.
const grid: ElevationGrid = {
  heightAt: (longitude, latitude) => (longitude < -0.001 ? null : 50 + latitude * 1000),
  cellMetres: 10,
  isWholeMetres: false,
  emptyCells: 0,
  source: 'heights.tif',
}
const NOTHING = { tees: 0, greens: 0, contours: 0, falls: 0 }
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
    expect(filled).toEqual({ tees: 1, greens: 1, contours: 0, falls: 1 })
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
    expect(elsewhere.filled).toEqual(NOTHING)
  })
})

describe('the slope of a green from a grid', () => {
  const ORIGIN = [0, 0] as const
  const plane = tangentPlane(ORIGIN)
  /** Heights by the course plane. */
  const heightsOf = (
    height: (x: number, y: number) => number,
    more: Partial<ElevationGrid>,
  ): ElevationGrid => ({
    ...grid,
    heightAt: (longitude, latitude) => height(...plane.toPlane([longitude, latitude])),
    ...more,
  })
  // Down 2 per cent to the west, with a step of 30 cm across the middle.
  const tiers = (x: number, y: number): number => 60 + 0.02 * x + 0.15 * Math.tanh((y - 300) / 2)
  const hole = (of: Course): ReturnType<typeof holeFromCourse> => holeFromCourse(of, '1')
  const surveyed = (more: Partial<Area> = {}): Course =>
    course({
      holes: [
        holeLine('1', [
          [0, 0],
          [0, 300],
        ]),
      ],
      areas: [area('g', 'green', rectangle(-12, 285, 12, 315), more)],
      tees: [tee('t', 'white', [0, 0])],
    })

  it('is its contours where the cells are fine', () => {
    const {
      course: after,
      filled,
      tooCoarse,
    } = withElevation(surveyed(), heightsOf(tiers, { cellMetres: 1 }))
    expect(filled).toEqual({ tees: 1, greens: 1, contours: 1, falls: 0 })
    expect(tooCoarse).toBeNull()
    const surface = greenSurface(hole(after))
    expect(surface.source).toBe('grid')
    expect(surface.gradientAt(4, 308)[0]).toBeCloseTo(0.02, 3)
    // At a node the slope is the difference of its neighbours: 7.5 per cent on the step itself, seen over 2 m.
    expect(surface.gradientAt(0, 300)[1]).toBeCloseTo(0.15 * Math.tanh(0.5), 3)
    expect(surface.heightAt(0, 308)).toBeCloseTo(0.15, 2)
    expect(greenSurveySentence(greenSurvey(hole(after)) ?? expect.fail())).toMatch(
      /^The green falls \d\.\d per cent towards its (front left|left), by a grid of heights \(cell 1 m\)\.$/,
    )
  })

  it('is one plane, called so, where they are between', () => {
    const { course: after, filled } = withElevation(
      surveyed(),
      heightsOf((x) => 60 + 0.0234 * x, { cellMetres: 9.8 }),
    )
    expect(filled.falls).toBe(1)
    expect(after.areas[0]).toMatchObject({ fallPercent: 2.3, fallTowardDegrees: 270, gridCellMetres: 9.8 })
    expect(greenSurveySentence(greenSurvey(hole(after)) ?? expect.fail())).toBe(
      'The green falls 2.3 per cent towards its left, a mean from a grid of heights too coarse for its contours (cell 9.8 m).',
    )
  })

  it('is none where they are coarse or in whole metres, and every reader is told', () => {
    for (const more of [{ cellMetres: 30.9 }, { cellMetres: 5, isWholeMetres: true }]) {
      const { course: after, filled, faults, tooCoarse } = withElevation(surveyed(), heightsOf(tiers, more))
      expect(filled).toEqual({ tees: 1, greens: 1, contours: 0, falls: 0 })
      expect(tooCoarse).toMatch(/too coarse for the slope of a green$/)
      expect(codes(faults)).toEqual(['MAR-ELEV-008'])
      expect(after.areas[0]).toMatchObject({ fallPercent: null, heightGrid: null })
      expect(greenSurface(hole(after)).source).toBe('level')
      expect(greenSurveySentence(greenSurvey(hole(after)) ?? expect.fail())).toContain(
        `(cell ${more.cellMetres} m) is too coarse for the slope of this green; it is taken as level.`,
      )
      // A finer grid may come later; one as coarse changes nothing more.
      expect(withElevation(after, heightsOf(tiers, more)).course).toBe(after)
      if (more.cellMetres > 30)
        expect(withElevation(after, heightsOf(tiers, { cellMetres: 1 })).filled.contours).toBe(1)
    }
  })

  it('is never taken against what was surveyed, nor where it is steeper than a green', () => {
    const typed = surveyed({ fallPercent: 1, fallTowardDegrees: 90 })
    expect(withElevation(typed, heightsOf(tiers, { cellMetres: 1 })).course.areas[0]).toMatchObject({
      fallPercent: 1,
      heightGrid: null,
    })
    const steep = withElevation(
      surveyed(),
      heightsOf((x) => 60 + 0.12 * x, {}),
    )
    expect(codes(steep.faults)).toEqual(['MAR-ELEV-012'])
    expect(steep.course.areas[0]?.fallPercent).toBeNull()
  })

  it('of a real grid of a third of an arc-second is the mean fall that its cells have', async () => {
    const file = 'portland-ned-nodata-crop-deflate-tiled.tif'
    const real = await readElevation(new Uint8Array(readFileSync(`test/fixtures/courses/${file}`)), file)
    expect(real.isWholeMetres).toBe(false)
    expect(real.cellMetres).toBeGreaterThan(7)
    expect(real.cellMetres).toBeLessThan(11)
    // An invented green laid on ground that falls gently there; the yardstick is central differences over 20 m.
    const origin = [-122.6635, 45.5102] as const
    const there = tangentPlane(origin)
    const at = (x: number, y: number): number => real.heightAt(...there.toLonLat([x, y])) ?? Number.NaN
    const green = area('g', 'green', rectangle(-10, -10, 10, 10))
    const { course: after, filled } = withElevation(course({ origin, areas: [green] }), real)
    expect(filled).toEqual({ tees: 0, greens: 1, contours: 0, falls: 1 })
    const [riseX, riseY] = [(at(10, 0) - at(-10, 0)) / 20, (at(0, 10) - at(0, -10)) / 20]
    const { fallPercent, fallTowardDegrees } = after.areas[0] ?? {}
    expect(fallPercent).toBeGreaterThan(0.5)
    expect(Math.abs((fallPercent ?? 0) - 100 * Math.hypot(riseX, riseY))).toBeLessThan(0.8)
    const toward = ((Math.atan2(-riseX, -riseY) * 180) / Math.PI + 360) % 360
    expect(Math.abs((((fallTowardDegrees ?? 0) - toward + 540) % 360) - 180)).toBeLessThan(25)
  })
})
