import type { Slopes } from './simulate-roll.ts'

/**
 * The same slopes read off once on a square raster about a place and straight between its nodes: for a surface through
 * spot heights, which costs every spot at every step of every roll. Beyond the square the surface itself is asked.
 */
export function sampledSlopes(
  slopes: Slopes,
  middle: readonly [x: number, y: number],
  reachMetres: number,
  cellMetres: number,
): Slopes {
  const half = Math.ceil(reachMetres / cellMetres)
  const side = 2 * half + 1
  const [left, bottom] = [middle[0] - half * cellMetres, middle[1] - half * cellMetres]
  const right = new Float64Array(side * side)
  const up = new Float64Array(side * side)
  for (let row = 0; row < side; row += 1)
    for (let column = 0; column < side; column += 1) {
      const [toRight, toUp] = slopes.gradientAt(left + column * cellMetres, bottom + row * cellMetres)
      right[row * side + column] = toRight
      up[row * side + column] = toUp
    }
  return {
    gradientAt: (x, y) => {
      const atColumn = (x - left) / cellMetres
      const atRow = (y - bottom) / cellMetres
      const column = Math.floor(atColumn)
      const row = Math.floor(atRow)
      if (column < 0 || row < 0 || column >= side - 1 || row >= side - 1) return slopes.gradientAt(x, y)
      const first = row * side + column
      const [across, along] = [atColumn - column, atRow - row]
      return [between(right, first, side, across, along), between(up, first, side, across, along)]
    },
  }
}

function between(nodes: Float64Array, first: number, side: number, across: number, along: number): number {
  const low = (nodes[first] ?? 0) * (1 - across) + (nodes[first + 1] ?? 0) * across
  const high = (nodes[first + side] ?? 0) * (1 - across) + (nodes[first + side + 1] ?? 0) * across
  return low * (1 - along) + high * along
}
