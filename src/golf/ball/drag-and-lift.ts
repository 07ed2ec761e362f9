import {
  DRAG_GRID,
  GRID_FIRST_SPIN_RPM,
  GRID_SPEEDS,
  GRID_SPIN_STEP_RPM,
  LIFT_GRID,
} from './drag-and-lift-grid.ts'

/**
 * Drag and lift coefficients for a spin (revolutions a minute) and an airspeed (m/s), linear between the figures of the
 * grid and level beyond its ends. Written into `out` as `[drag, lift]`: this is the inner loop of every flight.
 */
export function dragAndLiftInto(out: Float64Array, spinRpm: number, speed: number): void {
  const lastRow = DRAG_GRID.length - 1
  const row = Math.min(lastRow, Math.max(0, (spinRpm - GRID_FIRST_SPIN_RPM) / GRID_SPIN_STEP_RPM))
  const below = Math.min(lastRow - 1, Math.floor(row))
  const rowShare = row - below
  const lastColumn = GRID_SPEEDS.length - 1
  let column = 0
  while (column < lastColumn - 1 && speed > (GRID_SPEEDS[column + 1] as number)) column += 1
  const from = GRID_SPEEDS[column] as number
  const to = GRID_SPEEDS[column + 1] as number
  const columnShare = Math.min(1, Math.max(0, (speed - from) / (to - from)))
  out[0] = between(DRAG_GRID, below, rowShare, column, columnShare)
  out[1] = between(LIFT_GRID, below, rowShare, column, columnShare)
}

function between(
  grid: readonly (readonly number[])[],
  row: number,
  rowShare: number,
  column: number,
  columnShare: number,
): number {
  const low = grid[row] as readonly number[]
  const high = grid[row + 1] as readonly number[]
  const atLow =
    (low[column] as number) + columnShare * ((low[column + 1] as number) - (low[column] as number))
  const atHigh =
    (high[column] as number) + columnShare * ((high[column + 1] as number) - (high[column] as number))
  return atLow + rowShare * (atHigh - atLow)
}
