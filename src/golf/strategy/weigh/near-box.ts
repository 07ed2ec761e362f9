import { fineOffsets, type Places } from '../places.ts'
import { turnedCell } from './laid-tables.ts'

/** The box of coarse cells within which landings are told apart by fine cells; its rows are columns of the hole, as the kernel's are. */
export interface NearBox {
  readonly column: number
  readonly row: number
  readonly columns: number
  readonly rows: number
  /**
   * By phase (fine cell within a coarse one: its column times the fine cells to a coarse one, and its row), row and column
   * of the box: the place there, coarse ones in the kernel's numbers; −1 − n for number n on the green.
   */
  readonly places: Int32Array
}

/** Lays the box around every cell near the pin or on the green. */
export function nearBox(places: Places): NearBox {
  const { coarse, fine, finePerCoarse, isNearPin, finePlace, greenIndex } = places
  const near = Array.from(isNearPin.keys()).filter((cell) => isNearPin[cell] === 1)
  const xs = near.map((cell) => cell % coarse.columns)
  const ys = near.map((cell) => Math.floor(cell / coarse.columns))
  const extent = (at: readonly number[]): [from: number, count: number] => {
    const from = at.reduce((least, one) => Math.min(least, one), Number.MAX_SAFE_INTEGER)
    return near.length === 0 ? [0, 0] : [from, at.reduce((most, one) => Math.max(most, one), 0) + 1 - from]
  }
  const [row, rows] = extent(xs)
  const [column, columns] = extent(ys)
  const { toCellX, toCellY } = fineOffsets(places)
  const table: number[] = []
  for (let phaseX = 0; phaseX < finePerCoarse; phaseX++)
    for (let phaseY = 0; phaseY < finePerCoarse; phaseY++)
      for (let x = row; x < row + rows; x++)
        for (let y = column; y < column + columns; y++) {
          const cell = y * coarse.columns + x
          const fineColumn = finePerCoarse * x + phaseX - toCellX
          const fineRow = finePerCoarse * y + phaseY - toCellY
          const isFine =
            isNearPin[cell] === 1 &&
            fineColumn >= 0 &&
            fineColumn < fine.columns &&
            fineRow >= 0 &&
            fineRow < fine.rows
          const finer = isFine ? (finePlace[fineRow * fine.columns + fineColumn] as number) : -1
          const place = finer < 0 ? cell : finer
          const green = isNearPin[cell] === 1 ? (greenIndex[place] as number) : -1
          table.push(green >= 0 ? -1 - green : finer < 0 ? turnedCell(places, cell) : finer)
        }
  return { column, row, columns, rows, places: Int32Array.from(table) }
}
