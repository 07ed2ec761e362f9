import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cellCentre, cellIndex, createRaster } from './raster.ts'

const raster = createRaster({ originX: -10, originY: 5, resolution: 3, columns: 7, rows: 4 }, 9)

describe('raster', () => {
  it('starts full of one code', () => {
    expect(raster.cells).toHaveLength(28)
    expect(raster.cells.every((code) => code === 9)).toBe(true)
    expect(createRaster({ originX: 0, originY: 0, resolution: 1, columns: 2, rows: 1 }).cells).toEqual(
      new Uint8Array(2),
    )
  })

  it('counts columns to the right and rows upwards from the centre of cell 0', () => {
    expect(cellCentre(raster, 0)).toEqual([-10, 5])
    expect(cellCentre(raster, 8)).toEqual([-7, 8])
    expect(cellIndex(raster, -7.2, 8.9)).toBe(8)
  })

  it('is −1 outside, half a cell beyond the outer centres', () => {
    expect(cellIndex(raster, -11.49, 3.51)).toBe(0)
    expect(cellIndex(raster, -11.51, 5)).toBe(-1)
    expect(cellIndex(raster, -10, 3.49)).toBe(-1)
    expect(cellIndex(raster, 9.49, 15.49)).toBe(27)
    expect(cellIndex(raster, 9.51, 14)).toBe(-1)
    expect(cellIndex(raster, 8, 15.51)).toBe(-1)
    expect(cellIndex(raster, Number.NaN, 5)).toBe(-1)
  })

  it('finds each cell again from anywhere inside it', () => {
    const inside = fc.double({ min: -1.49, max: 1.49, noNaN: true })
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 27 }), inside, inside, (index, dx, dy) => {
        const [x, y] = cellCentre(raster, index)
        expect(cellIndex(raster, x + dx, y + dy)).toBe(index)
      }),
    )
  })
})
