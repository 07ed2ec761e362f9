import type { WordTable } from '#golf/round/word-table.ts'

/** A column of a printed table: its heading and whether its figures stand right. */
export interface Column {
  readonly heading: string
  readonly isFigure?: boolean
}

/** Rows of text → lines with columns of equal width, two spaces between, no trailing space. */
export function tableLines(columns: readonly Column[], rows: readonly (readonly string[])[]): string[] {
  const widths = columns.map((column, index) =>
    Math.max(column.heading.length, ...rows.map((row) => (row[index] ?? '').length)),
  )
  const line = (cells: readonly string[]): string =>
    columns
      .map((column, index) => {
        const cell = cells[index] ?? ''
        return column.isFigure === true ? cell.padStart(widths[index] ?? 0) : cell.padEnd(widths[index] ?? 0)
      })
      .join('  ')
      .trimEnd()
  return [line(columns.map((column) => column.heading)), ...rows.map(line)]
}

/** A table of the shared words as lines. */
export function wordTableLines({ columns, rows }: WordTable): string[] {
  return tableLines(columns, rows)
}
