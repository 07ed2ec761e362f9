import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { isLeftOfEdge } from '#numbers/geometry/polygon.ts'
import type { Raster } from './raster.ts'

/**
 * Writes `code` into every cell whose centre lies inside `polygon` (even-odd; the very cells for which
 * `polygonContains` says yes) or on an edge to its left or right, so that a mirrored polygon paints the mirrored
 * cells. Row by row: time grows with the rows each edge spans and the cells painted, not with their product.
 */
export function paintPolygon(raster: Raster, polygon: Polygon, code: number): void {
  const { rows, columns, cells } = raster
  // How many edges pass each row, then room for each row's crossings side by side.
  const starts = new Int32Array(rows + 1)
  eachEdge(raster, polygon, (_a, _b, row) => {
    starts[row + 1] = (starts[row + 1] as number) + 1
  })
  for (let row = 0; row < rows; row++) starts[row + 1] = (starts[row + 1] as number) + (starts[row] as number)
  const crossings = new Int32Array(starts[rows] as number)
  const filled = starts.slice(0, rows)
  eachEdge(raster, polygon, (a, b, row, y) => {
    const place = filled[row] as number
    crossings[place] = columnOfCrossing(raster, a, b, y)
    filled[row] = place + 1
  })
  for (let row = 0; row < rows; row++) {
    const rowCrossings = crossings.subarray(starts[row], starts[row + 1]).sort()
    for (let i = 0; i + 1 < rowCrossings.length; i += 2) {
      const start = row * columns
      const [from, to] = [rowCrossings[i] as number, rowCrossings[i + 1] as number]
      cells.fill(code, start + (from >> 1), start + (to >> 1) + (to & 1))
    }
  }
}

// Calls back for each edge and each row whose centre line it spans, by the rule of `polygonContains`.
function eachEdge(
  raster: Raster,
  polygon: Polygon,
  visit: (a: Point, b: Point, row: number, y: number) => void,
): void {
  for (const ring of polygon) {
    let a = ring[ring.length - 1]
    for (const b of ring) {
      if (a !== undefined) {
        const low = Math.floor((Math.min(a[1], b[1]) - raster.originY) / raster.resolution) - 1
        const high = Math.ceil((Math.max(a[1], b[1]) - raster.originY) / raster.resolution) + 1
        for (let row = Math.max(0, low); row <= Math.min(raster.rows - 1, high); row++) {
          const y = raster.originY + row * raster.resolution
          if (a[1] > y !== b[1] > y) visit(a, b, row, y)
        }
      }
      a = b
    }
  }
}

// Twice the first column whose centre is not left of the edge, and one more where it lies on the edge: in the order of the
// crossings, and enough to begin and to end a stretch with it. A guess by division, put right exactly.
function columnOfCrossing(raster: Raster, a: Point, b: Point, y: number): number {
  const { originX, resolution, columns } = raster
  const centre = (column: number): number => originX + column * resolution
  const x = a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])
  let column = Math.min(columns, Math.max(0, Math.ceil((x - originX) / resolution)))
  while (column > 0 && !isLeftOfEdge(a, b, centre(column - 1), y)) column--
  while (column < columns && isLeftOfEdge(a, b, centre(column), y)) column++
  const isOnEdge = column < columns && !isLeftOfEdge([-a[0], a[1]], [-b[0], b[1]], -centre(column), y)
  return 2 * column + (isOnEdge ? 1 : 0)
}
