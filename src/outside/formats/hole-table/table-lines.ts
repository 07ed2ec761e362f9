import Papa from 'papaparse'
import { findDelimiter, headerLineOf, isRemark, readColumns, type TableColumns } from './table-columns.ts'

/** One line of a hole table as cells. */
export interface TableLine {
  readonly cells: readonly string[]
  /** Line of the file, the header being 1. */
  readonly line: number
  /** True where a quotation mark is not closed: its cells may be those of several lines. */
  readonly isTorn: boolean
}

/** The header of a hole table and the lines below it that are not blank. Throws `MAR-IMPORT-015` to `017` for a header that cannot be read. */
export function readTableLines(
  text: string,
  where: string,
): { readonly columns: TableColumns; readonly lines: readonly TableLine[] } {
  const body = text.replace(/^\uFEFF/, '')
  const delimiter = findDelimiter(headerLineOf(body), where)
  const parsed = Papa.parse<string[]>(body, { delimiter })
  const badQuotes = new Set(parsed.errors.filter(({ type }) => type === 'Quotes').map(({ row }) => row))
  const [header, ...lines] = parsed.data
    .map((cells, index) => ({ cells, line: index + 1, isTorn: badQuotes.has(index) }))
    .filter(({ cells }) => !isRemark(cells[0] ?? '') && cells.some((cell) => cell.trim() !== ''))
  return { columns: readColumns(header?.cells ?? [], where), lines }
}
