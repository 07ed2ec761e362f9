import { Failure } from '#faults/failure.ts'
import { headingAndUnit, ownMeaning, tidyHeading, unitOf } from './column-meaning.ts'
import type { ColumnMapping } from './parse-mapping.ts'
import { LINES_BEFORE_HEADER } from './settings.ts'
import { isRemark, parseLine } from './table-rows.ts'

/** Where in a text the table stands. */
export interface FoundTable {
  readonly delimiter: string
  /** As written; `#1`, `#2` … where the table has no header. */
  readonly headings: readonly string[]
  /** Units that stand in a row of their own below the header, by column. */
  readonly units: readonly string[]
  /** Line of the header, from 1; 0 where there is none. */
  readonly headerLine: number
  /** Index of the first line below the header and the units. */
  readonly firstRow: number
}

const DELIMITERS = [',', ';', '\t', '|'] as const

/**
 * Finds delimiter and header of a shot table: the first of its lines that holds what is mapped or our own headings,
 * else the first that is as wide as the table. Throws `MAR-SHOTS-003` when no one character separates the columns.
 */
export function findTable(
  lines: readonly string[],
  mapping: ColumnMapping | null,
  where: string,
): FoundTable {
  const sample = lines.slice(0, LINES_BEFORE_HEADER).map((line, index) => ({ line, index }))
  const filled = sample.filter(({ line }) => line.trim() !== '' && !isRemark(line))
  const delimiter = findDelimiter(
    filled.map(({ line }) => line),
    where,
  )
  const rows = filled.map(({ line, index }) => ({ cells: parseLine(line, delimiter) ?? [], index }))
  const width = modeOf(rows.map(({ cells }) => cells.length))
  const header =
    rows.find(({ cells }) => (mapping === null ? isOwnHeader(cells) : isMappedHeader(cells, mapping))) ??
    rows.find(({ cells }) => cells.length >= Math.min(width, 2) && cells.length === width)
  const isHeadless =
    mapping !== null &&
    [...mapping.keys()].every((heading) => /^#\d+$/.test(heading)) &&
    isData(header?.cells)
  const cells = (header?.cells ?? []).map((cell) => cell.replace(/^\uFEFF/, '').trim())
  const headerIndex = header?.index ?? 0
  if (isHeadless)
    return {
      delimiter,
      headings: cells.map((_, index) => `#${index + 1}`),
      units: [],
      headerLine: 0,
      firstRow: headerIndex,
    }
  const next = rows.find(({ index }) => index > headerIndex)
  const hasUnits = next !== undefined && isUnitRow(next.cells)
  return {
    delimiter,
    headings: cells,
    units: hasUnits ? next.cells : [],
    headerLine: headerIndex + 1,
    firstRow: (hasUnits ? next.index : headerIndex) + 1,
  }
}

function findDelimiter(lines: readonly string[], where: string): string {
  const fits = DELIMITERS.map((delimiter) => {
    const counts = lines.map((line) => parseLine(line, delimiter)?.length ?? 0)
    const width = modeOf(counts.filter((count) => count > 1))
    return { delimiter, width, lines: counts.filter((count) => count === width).length }
  }).filter(({ width }) => width > 1)
  fits.sort((a, b) => b.lines - a.lines || b.width - a.width)
  const [first, second] = fits
  if (first !== undefined && (first.lines !== second?.lines || first.width !== second.width))
    return first.delimiter
  throw new Failure(
    'MAR-SHOTS-003',
    first === undefined
      ? 'This is no table of shots: no comma, semicolon or tab separates columns in its first lines.'
      : 'It is not clear which character separates the columns. Use commas, semicolons or tabs, one kind only.',
    where,
  )
}

/** The commonest of some counts, the largest of several; 0 when there are none. */
function modeOf(counts: readonly number[]): number {
  const times = new Map<number, number>()
  for (const count of counts) times.set(count, (times.get(count) ?? 0) + 1)
  return [...times].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0
}

function isOwnHeader(cells: readonly string[]): boolean {
  const meanings = cells.map((cell) => ownMeaning(cell)?.what)
  return meanings.includes('club') && (meanings.includes('carry') || meanings.includes('total'))
}

function isMappedHeader(cells: readonly string[], mapping: ColumnMapping): boolean {
  const headings = [...mapping.keys()].filter((heading) => !heading.startsWith('#'))
  return headings.length > 0 && headings.every((heading) => columnOf(heading, cells) !== -1)
}

/** Where a heading stands, by its letters or else by its words; `#3` is the third column. −1 when nowhere. */
export function columnOf(heading: string, cells: readonly string[]): number {
  const position = /^#(\d+)$/.exec(heading)
  if (position !== null) return Number(position[1]) <= cells.length ? Number(position[1]) - 1 : -1
  const exact = cells.findIndex((cell) => cell.replace(/^\uFEFF/, '').trim() === heading.trim())
  if (exact !== -1) return exact
  const tidy = tidyHeading(heading)
  const alike = cells.findIndex((cell) => tidyHeading(cell) === tidy)
  return alike !== -1 ? alike : cells.findIndex((cell) => headingAndUnit(cell).words === tidy)
}

function isData(cells: readonly string[] = []): boolean {
  return cells.some((cell) => /^\s*[+-]?\d+(?:[.,]\d+)?\s*$/.test(cell))
}

function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell.trim() !== '')
  // A lone letter may be a club or a side.
  return filled.some((cell) => unitOf(cell) !== null) && !filled.some((cell) => /\d/.test(cell))
}
