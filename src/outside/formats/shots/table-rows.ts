import Papa from 'papaparse'
import { ROWS_AT_ONCE, ROWS_IN_A_CELL } from './settings.ts'

/** One row of a table; `line` is where it starts in the file, from 1. `isTorn`: a quotation mark in it is not closed. */
export interface TableRow {
  readonly cells: readonly string[]
  readonly line: number
  readonly isTorn: boolean
}

/**
 * The filled rows of a table from a line on, in blocks, so that no more than a block stands in memory as cells. A
 * quotation mark without its fellow spoils its own line and no other; a cell that runs over lines is put together.
 */
export function* tableRows(
  lines: readonly string[],
  fromLine: number,
  delimiter: string,
  width: number,
): Generator<TableRow> {
  for (let start = fromLine; start < lines.length; start += ROWS_AT_ONCE) {
    const block = lines.slice(start, start + ROWS_AT_ONCE)
    const { data, errors } = Papa.parse<string[]>(block.join('\n'), { delimiter, newline: '\n' })
    if (errors.some(({ type }) => type === 'Quotes') || data.length !== block.length) {
      start = yield* rowsOneByOne(lines, start, delimiter, width)
      continue
    }
    for (const [index, cells] of data.entries())
      if (isFilled(cells)) yield { cells, line: start + index + 1, isTorn: false }
  }
}

/** The same for a block with loose quotation marks or cells over lines; returns where the next block starts, less a block. */
function* rowsOneByOne(
  lines: readonly string[],
  start: number,
  delimiter: string,
  width: number,
): Generator<TableRow, number> {
  let index = start
  while (index < Math.min(lines.length, start + ROWS_AT_ONCE)) {
    const { cells, taken, isTorn } = rowAt(lines, index, delimiter, width)
    if (isFilled(cells)) yield { cells, line: index + 1, isTorn }
    index += taken
  }
  return index - ROWS_AT_ONCE
}

function rowAt(
  lines: readonly string[],
  index: number,
  delimiter: string,
  width: number,
): { readonly cells: readonly string[]; readonly taken: number; readonly isTorn: boolean } {
  const own = parseLine(lines[index] ?? '', delimiter)
  if (own !== null) return { cells: own, taken: 1, isTorn: false }
  for (let taken = 2; taken <= ROWS_IN_A_CELL && index + taken <= lines.length; taken += 1) {
    const cells = parseLine(lines.slice(index, index + taken).join('\n'), delimiter)
    if (cells?.length === width) return { cells, taken, isTorn: false }
  }
  return { cells: (lines[index] ?? '').split(delimiter), taken: 1, isTorn: true }
}

/** The cells of a row, `null` when its quotation marks do not close. */
export function parseLine(line: string, delimiter: string): readonly string[] | null {
  if (!line.includes('"')) return line.split(delimiter)
  const { data, errors } = Papa.parse<string[]>(line, { delimiter, newline: '\r\n' })
  return errors.some(({ type }) => type === 'Quotes') || data.length !== 1 ? null : (data[0] ?? null)
}

function isFilled(cells: readonly string[]): boolean {
  return !isRemark(cells[0] ?? '') && cells.some((cell) => cell.trim() !== '')
}

/**
 * Whether a line, or a row by its first cell, is no part of the table: a remark, or the `sep=;` that spreadsheets write
 * first. `#` alone heads a column of shot numbers.
 */
export function isRemark(text: string): boolean {
  return /^# *\p{L}/u.test(text) || /^"?sep=/i.test(text)
}
