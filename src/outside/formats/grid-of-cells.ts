import type { ElevationGrid } from '#golf/course/elevation-grid.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'

/** Heights in rows from north to south, each from west to east. */
export interface HeightCells {
  /** Metres; `NaN` where there is no height. */
  readonly heights: Float32Array
  readonly columns: number
  readonly rows: number
  /** The centre of the first cell, degrees. */
  readonly west: number
  readonly north: number
  /** From one centre to the next, degrees, both positive. */
  readonly stepLongitude: number
  readonly stepLatitude: number
  /** How far the outermost cells reach beyond their centres, cells: 0.5 when a cell is an area, 0 when it is a point. */
  readonly margin: 0 | 0.5
  readonly source: string
}

/**
 * Cells as a grid of heights, bilinear between their centres; a height is `null` when a cell that it would be made of
 * is empty. In the outer half of an outermost cell the height is that at its centre line.
 */
export function gridOfCells(cells: HeightCells): ElevationGrid {
  const { heights, columns, rows, margin, stepLongitude, stepLatitude } = cells
  const heightAt = (longitude: number, latitude: number): number | null => {
    const column = within((longitude - cells.west) / stepLongitude, columns, margin)
    const row = within((cells.north - latitude) / stepLatitude, rows, margin)
    if (column === null || row === null) return null
    let height = 0
    for (const [r, rowShare] of pair(row)) {
      for (const [c, columnShare] of pair(column)) {
        const share = rowShare * columnShare
        // An empty neighbour without a share must not make the sum NaN.
        if (share > 0) height += share * (heights[r * columns + c] ?? Number.NaN)
      }
    }
    return Number.isNaN(height) ? null : height
  }
  const middle = [
    cells.west + ((columns - 1) / 2) * stepLongitude,
    cells.north - ((rows - 1) / 2) * stepLatitude,
  ] as const
  const [width, depth] = tangentPlane(middle).toPlane([middle[0] + stepLongitude, middle[1] - stepLatitude])
  const cellMetres = Math.max(Math.abs(width), Math.abs(depth))
  return {
    heightAt,
    cellMetres,
    isWholeMetres: heights.every((height) => Number.isNaN(height) || Number.isInteger(height)),
    emptyCells: countEmpty(heights),
    source: cells.source,
  }
}

/** What rounding in degrees can move a place by, cells: a tenth of a millimetre on the ground. */
const SLACK = 1e-6

/** A place along an axis in cells, kept between the outermost centres; `null` beyond the cells. */
function within(place: number, count: number, margin: number): number | null {
  if (!(place >= -margin - SLACK && place <= count - 1 + margin + SLACK)) return null
  const kept = Math.min(Math.max(place, 0), count - 1)
  const centre = Math.round(kept)
  // A place on a centre needs no neighbour, which may be empty.
  return Math.abs(kept - centre) < SLACK ? centre : kept
}

function pair(place: number): readonly [index: number, share: number][] {
  const first = Math.floor(place)
  const share = place - first
  return [
    [first, 1 - share],
    [first + 1, share],
  ]
}

function countEmpty(heights: Float32Array): number {
  let count = 0
  for (const height of heights) if (Number.isNaN(height)) count++
  return count
}
