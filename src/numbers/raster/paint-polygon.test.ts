import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point, Polygon } from '../geometry/point.ts'
import { isLeftOfEdge, polygonArea, polygonContains } from '../geometry/polygon.ts'
import { seededGenerator } from '../statistics/seeded-generator.ts'
import { paintPolygon } from './paint-polygon.ts'
import { cellCentre, createRaster, type Raster } from './raster.ts'

function mirrored(polygon: Polygon): Polygon {
  return polygon.map((ring) => ring.map(([x, y]) => [-x, y] as const))
}

/** By the rule of `polygonContains`, which takes the edges on the left; here those on the right are in too. */
function isOnSideEdge(polygon: Polygon, [x, y]: Point): boolean {
  return polygon.some((ring) =>
    ring.some((b, i) => {
      const a = ring.at(i - 1) as Point
      const isLeft = isLeftOfEdge(a, b, x, y)
      return a[1] > y !== b[1] > y && !isLeft && !isLeftOfEdge([-a[0], a[1]], [-b[0], b[1]], -x, y)
    }),
  )
}

function expectSameAsContains(raster: Raster, polygon: Polygon): void {
  paintPolygon(raster, polygon, 7)
  const expected = raster.cells.map((_, index) => {
    const centre = cellCentre(raster, index)
    return polygonContains(polygon, centre) || isOnSideEdge(polygon, centre) ? 7 : 0
  })
  expect(raster.cells).toEqual(expected)
}

describe('paintPolygon', () => {
  it('paints the cells whose centres are inside: side edges and the lower one in, the upper one out', () => {
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
    expect([...raster.cells].join('')).toBe('011101110000')
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

  it('paints the mirrored cells of a mirrored polygon, also where edges lie on centres of cells', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.integer({ min: 3, max: 12 }), (seed, count) => {
        const random = seededGenerator(seed)
        const place = (): number => Math.floor(15 * random()) - 7
        const polygon = [Array.from({ length: count }, () => [place(), place()] as const)]
        const paint = (shape: Polygon): string[] => {
          const raster = createRaster({ originX: -6, originY: -6, resolution: 1, columns: 13, rows: 13 })
          paintPolygon(raster, shape, 1)
          return Array.from({ length: 13 }, (_, row) => raster.cells.slice(13 * row, 13 * row + 13).join(''))
        }
        const turned = paint(mirrored(polygon)).map((row) => [...row].reverse().join(''))
        expect(turned).toEqual(paint(polygon))
      }),
      { numRuns: 300 },
    )
  })

  it('leaves no cell of a cut field out', () => {
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
    // Where the cut runs through a centre, what is painted later has the cell, as the order of the ground classes wants it.
    const onCut = raster.cells.filter((code, i) => code === 2 && left[i] === 1)
    expect(onCut.length).toBe(10)
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
