import { fadeShare } from '#numbers/geometry/fade-outside.ts'
import type { HeightSurface } from '#numbers/geometry/height-surface.ts'

/** Heights at the nodes of a square grid, row after row; node 0 lies at `[0, 0]`, columns along x, rows along y. */
export interface GridNodes {
  readonly columns: number
  readonly rows: number
  readonly cellMetres: number
  readonly heights: readonly number[]
}

/**
 * The smooth surface through the nodes of a grid by bicubic convolution (Keys 1981, with −1/2; from memory): exact at
 * the nodes and for every plane and, two cells in from the edge, every surface of second degree. Outside the grid it
 * goes on straight while it fades to height 0 over `fadeMetres`. At least two columns and two rows.
 */
export function gridSurface(nodes: GridNodes, fadeMetres: number): HeightSurface {
  const { cellMetres } = nodes
  const border = Math.ceil(fadeMetres / cellMetres) + 3
  const columns = nodes.columns + 2 * border
  const rows = nodes.rows + 2 * border
  const padded = padRows(nodes, border, fadeMetres)
  // Weights of the four nodes along each axis, and their slopes, written anew at every call.
  const [alongX, alongY, slopeX, slopeY] = [quad(), quad(), quad(), quad()]
  const locate = (x: number, y: number): number => {
    const u = x / cellMetres + border
    const v = y / cellMetres + border
    if (!(u >= 1 && v >= 1 && u < columns - 2 && v < rows - 2)) return -1
    const [column, row] = [Math.floor(u), Math.floor(v)]
    weightsInto(alongX, slopeX, u - column)
    weightsInto(alongY, slopeY, v - row)
    return (row - 1) * columns + column - 1
  }
  const sum = (first: number, weightX: Float64Array, weightY: Float64Array): number => {
    let total = 0
    for (let j = 0; j < 4; j++) {
      const at = first + j * columns
      let line = 0
      for (let i = 0; i < 4; i++) line += (weightX[i] as number) * (padded[at + i] as number)
      total += (weightY[j] as number) * line
    }
    return total
  }
  return {
    heightAt(x, y) {
      const first = locate(x, y)
      return first < 0 ? 0 : sum(first, alongX, alongY)
    },
    gradientAt(x, y) {
      const first = locate(x, y)
      if (first < 0) return [0, 0]
      return [sum(first, slopeX, alongY) / cellMetres, sum(first, alongX, slopeY) / cellMetres]
    },
  }
}

function quad(): Float64Array {
  return new Float64Array(4)
}

/** Weights of the nodes at −1, 0, 1 and 2 at a place `t` from 0 to 1 between the middle two, and their slopes. */
function weightsInto(weights: Float64Array, slopes: Float64Array, t: number): void {
  weights[0] = t * (-0.5 + t * (1 - 0.5 * t))
  weights[1] = 1 + t * t * (1.5 * t - 2.5)
  weights[2] = t * (0.5 + t * (2 - 1.5 * t))
  weights[3] = t * t * (0.5 * t - 0.5)
  slopes[0] = -0.5 + t * (2 - 1.5 * t)
  slopes[1] = t * (4.5 * t - 5)
  slopes[2] = 0.5 + t * (4 - 4.5 * t)
  slopes[3] = t * (1.5 * t - 1)
}

/** The nodes with a border on all sides: straight on from the outer two, and fading. */
function padRows(nodes: GridNodes, border: number, fadeMetres: number): Float64Array {
  const columns = nodes.columns + 2 * border
  const rows = nodes.rows + 2 * border
  const padded = new Float64Array(columns * rows)
  const goOn = (edge: number, inner: number, steps: number): number =>
    fadeShare(((steps - 1) * nodes.cellMetres) / fadeMetres) * (edge + steps * (edge - inner))
  const extend = (start: number, step: number, count: number): void => {
    const value = (k: number): number => padded[start + k * step] as number
    for (let k = 1; k <= border; k++) {
      padded[start + (border - k) * step] = goOn(value(border), value(border + 1), k)
      const last = border + count - 1
      padded[start + (last + k) * step] = goOn(value(last), value(last - 1), k)
    }
  }
  for (let row = 0; row < nodes.rows; row++) {
    const start = (row + border) * columns
    padded.set(nodes.heights.slice(row * nodes.columns, (row + 1) * nodes.columns), start + border)
    extend(start, 1, nodes.columns)
  }
  for (let column = 0; column < columns; column++) extend(column, columns, nodes.rows)
  return padded
}
