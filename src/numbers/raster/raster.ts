import type { Point } from '#numbers/geometry/point.ts'

/** Where the cells of a raster lie; metres. */
export interface RasterGrid {
  /** Centre of cell 0, the lowest and leftmost. */
  readonly originX: number
  readonly originY: number
  /** Side of a cell. */
  readonly resolution: number
  readonly columns: number
  readonly rows: number
}

/** One byte a cell over a grid: cell `row · columns + column`, rows upwards from the lowest y. */
export interface Raster extends RasterGrid {
  readonly cells: Uint8Array
}

/** A raster with `code` (0 to 255) in every cell. */
export function createRaster(grid: RasterGrid, code = 0): Raster {
  const { originX, originY, resolution, columns, rows } = grid
  return { originX, originY, resolution, columns, rows, cells: new Uint8Array(columns * rows).fill(code) }
}

/** The cell that holds the place `(x, y)` in metres, or −1 outside the raster. */
export function cellIndex(raster: RasterGrid, x: number, y: number): number {
  const column = Math.floor((x - raster.originX) / raster.resolution + 0.5)
  const row = Math.floor((y - raster.originY) / raster.resolution + 0.5)
  return column >= 0 && row >= 0 && column < raster.columns && row < raster.rows
    ? row * raster.columns + column
    : -1
}

/** The centre of a cell, metres; `index` must be a cell of the raster. */
export function cellCentre(raster: RasterGrid, index: number): Point {
  const row = Math.floor(index / raster.columns)
  return [
    raster.originX + (index - row * raster.columns) * raster.resolution,
    raster.originY + row * raster.resolution,
  ]
}
