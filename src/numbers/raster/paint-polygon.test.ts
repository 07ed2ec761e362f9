import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Polygon } from '../geometry/point.ts'
import { polygonArea, polygonContains } from '../geometry/polygon.ts'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { paintPolygon } from './paint-polygon.ts'
import { cellCentre, createRaster, type Raster } from './raster.ts'

function expectSameAsContains(raster: Raster, polygon: Polygon): void {
  paintPolygon(raster, polygon, 7)
  const expected = raster.cells.map((_, index) =>
    polygonContains(polygon, cellCentre(raster, index)) ? 7 : 0,
  )
  expect(raster.cells).toEqual(expected)
}

describe('paintPolygon', () => {
  it('paints the cells whose centres are inside: left and lower edges in, right and upper out', () => {
    const raster = createRaster({ originX: 0, originY: 0, resolution: 1, columns: 4, rows: 3 })
    paintPolygon(
      raster,
      [
        [
          [1, 0],
          [3, 0],
          [3, 2],
          [1, 2],
        ],
      ],
      1,
    )
    expect([...raster.cells].join('')).toBe('011001100000')
  })

  it('paints exactly the cells that polygonContains names, for rings of any shape', () => {
    const resolution = fc.constantFrom(0.7, 1, 3)
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: 3, max: 30 }),
        resolution,
        (seed, count, side) => {
          const random = seededGenerator(seed)
          // Crossing itself and reaching beyond the raster, with a second ring as a hole or an island.
          const ring = (): Polygon[number] =>
            Array.from({ length: count }, () => [120 * random() - 20, 120 * random() - 20])
          expectSameAsContains(
            createRaster({
              originX: 10 * random(),
              originY: 10 * random(),
              resolution: side,
              columns: 40,
              rows: 30,
            }),
            [ring(), ring()],
          )
        },
      ),
      { numRuns: 60 },
    )
  })

  it('does so when corners and edges lie on centres of cells', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 3, max: 12 }), (seed, count) => {
        const random = seededGenerator(seed)
        const ring = Array.from(
          { length: count },
          () => [0.1 * Math.floor(12 * random()) - 0.1, 0.1 * Math.floor(12 * random()) - 0.1] as const,
        )
        expectSameAsContains(
          createRaster({ originX: 0, originY: 0, resolution: 0.1, columns: 10, rows: 9 }),
          [ring],
        )
      }),
      { numRuns: 300 },
    )
  })

  it('gives every cell of a cut field to one side or the other', () => {
    const raster = createRaster({ originX: 0.5, originY: 0.5, resolution: 1, columns: 50, rows: 50 })
    paintPolygon(
      raster,
      [
        [
          [0, 0],
          [10, 0],
          [40, 50],
          [0, 50],
        ],
      ],
      1,
    )
    const left = raster.cells.slice()
    paintPolygon(
      raster,
      [
        [
          [10, 0],
          [50, 0],
          [50, 50],
          [40, 50],
        ],
      ],
      2,
    )
    expect(raster.cells.every((code) => code !== 0)).toBe(true)
    expect(raster.cells.every((code, i) => (left[i] === 1 ? code === 1 : code === 2))).toBe(true)
  })

  it('paints an area close to the true one', () => {
    const circle = Array.from({ length: 360 }, (_, i) => {
      const angle = (Math.PI * i) / 180
      return [100 + 80 * Math.sin(angle), 100 + 80 * Math.cos(angle)] as const
    })
    const raster = createRaster({ originX: 0.25, originY: 0.25, resolution: 0.5, columns: 400, rows: 400 })
    paintPolygon(raster, [circle], 1)
    const painted = raster.cells.reduce((sum, code) => sum + code, 0) * 0.25
    expect(Math.abs(painted / polygonArea([circle]) - 1)).toBeLessThan(5e-4)
  })

  it('leaves the raster alone when the polygon is empty or elsewhere', () => {
    const raster = createRaster({ originX: 0, originY: 0, resolution: 1, columns: 5, rows: 5 })
    paintPolygon(raster, [], 1)
    paintPolygon(raster, [[]], 1)
    paintPolygon(
      raster,
      [
        [
          [100, 100],
          [110, 100],
          [110, 110],
        ],
      ],
      1,
    )
    paintPolygon(
      raster,
      [
        [
          [-100, -100],
          [-90, 100],
          [-110, 100],
        ],
      ],
      1,
    )
    expect(raster.cells).toEqual(new Uint8Array(25))
  })
})
