import type { Point } from '#numbers/geometry/point.ts'
import type { RasterGrid } from '#numbers/raster/raster.ts'

/** A number for every cell of a grid, at the cell's centre; not-a-number where unknown. */
export interface Field extends RasterGrid {
  readonly values: Float64Array
}

/** One contour line: its points in order, and whether it closes. */
export interface ContourLine {
  readonly points: readonly Point[]
  readonly isClosed: boolean
}

/**
 * The lines along which a field has the given level, by marching squares with linear interpolation and the
 * saddle decided by the mean of its corners (common practice); squares with an unknown corner are left out.
 */
export function contourLines(field: Field, level: number): ContourLine[] {
  const { columns, rows, values, originX, originY, resolution } = field
  const value = (column: number, row: number): number => values[row * columns + column] ?? Number.NaN
  // An edge is named by its lower or left cell and its direction, so that neighbours agree on the crossing.
  const key = (column: number, row: number, isUp: boolean): number =>
    (row * columns + column) * 2 + (isUp ? 1 : 0)
  const places = new Map<number, Point>()
  const links = new Map<number, number[]>()
  const cross = (column: number, row: number, isUp: boolean): number => {
    const name = key(column, row, isUp)
    if (!places.has(name)) {
      const a = value(column, row)
      const b = isUp ? value(column, row + 1) : value(column + 1, row)
      const share = (level - a) / (b - a)
      places.set(name, [
        originX + (column + (isUp ? 0 : share)) * resolution,
        originY + (row + (isUp ? share : 0)) * resolution,
      ])
    }
    return name
  }
  const link = (a: number, b: number): void => {
    links.set(a, [...(links.get(a) ?? []), b])
    links.set(b, [...(links.get(b) ?? []), a])
  }

  for (let row = 0; row + 1 < rows; row += 1)
    for (let column = 0; column + 1 < columns; column += 1) {
      const corners = [
        value(column, row),
        value(column + 1, row),
        value(column + 1, row + 1),
        value(column, row + 1),
      ]
      if (corners.some(Number.isNaN)) continue
      const above = corners.map((corner) => corner >= level)
      const edges: number[] = []
      if (above[0] !== above[1]) edges.push(cross(column, row, false))
      if (above[1] !== above[2]) edges.push(cross(column + 1, row, true))
      if (above[2] !== above[3]) edges.push(cross(column, row + 1, false))
      if (above[3] !== above[0]) edges.push(cross(column, row, true))
      const [e0, e1, e2, e3] = edges
      if (e0 === undefined || e1 === undefined) continue
      if (e2 === undefined || e3 === undefined) link(e0, e1)
      else if (corners.reduce((sum, corner) => sum + corner, 0) / 4 >= level === above[0]) {
        link(e0, e1)
        link(e2, e3)
      } else {
        link(e3, e0)
        link(e1, e2)
      }
    }
  return joinLinks(places, links)
}

/** Walks the links into lines: open ones from their ends first, then the closed ones. */
function joinLinks(places: ReadonlyMap<number, Point>, links: ReadonlyMap<number, number[]>): ContourLine[] {
  const used = new Set<number>()
  const lines: ContourLine[] = []
  const walk = (start: number): void => {
    const points: Point[] = []
    let at: number | undefined = start
    let isClosed = false
    let before = -1
    while (at !== undefined && !used.has(at)) {
      used.add(at)
      const place = places.get(at)
      if (place !== undefined) points.push(place)
      const next: number | undefined = (links.get(at) ?? []).find((other) => !used.has(other))
      if (next === undefined)
        isClosed = points.length > 2 && before !== start && (links.get(at) ?? []).includes(start)
      before = at
      at = next
    }
    if (points.length > 1) lines.push({ points, isClosed })
  }
  for (const [name, others] of links) if (others.length === 1 && !used.has(name)) walk(name)
  for (const name of links.keys()) if (!used.has(name)) walk(name)
  return lines
}
