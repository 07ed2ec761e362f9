import { Failure } from '#faults/failure.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'

/** The columns that hold distances. */
export const DISTANCE_COLUMNS = ['from', 'to', 'near', 'far'] as const
export type DistanceColumn = (typeof DISTANCE_COLUMNS)[number]

/** Where each column stands, counted from 0, and the metres in one unit of the distance columns. */
export interface TableColumns {
  readonly hole: number
  readonly what: number
  readonly side: number
  /** −1 when the table has no notes. */
  readonly note: number
  readonly distances: Readonly<
    Record<DistanceColumn, { readonly index: number; readonly metresPerUnit: number }>
  >
  /** Headings that mean nothing here. */
  readonly unknown: readonly string[]
  readonly count: number
}

const DELIMITERS = [',', ';', '\t', '|'] as const

/** Whether a line, or a row by its first cell, is no part of the table: a remark, or the `sep=;` that spreadsheets write first. */
export function isRemark(text: string): boolean {
  return text.startsWith('#') || /^"?sep=/i.test(text)
}

/** The first line of a table that says something: its header. */
export function headerLineOf(text: string): string {
  return text.split(/\r?\n/).find((line) => line.trim() !== '' && !isRemark(line)) ?? ''
}

/** The character between columns, told by the header line. Throws `MAR-IMPORT-017` when no one character does it. */
export function findDelimiter(headerLine: string, where: string): string {
  const fitting = DELIMITERS.filter((delimiter) => {
    const cells = headerLine.split(delimiter).map(tidy)
    return cells.includes('hole') && cells.includes('what')
  })
  const [delimiter] = fitting
  if (delimiter !== undefined && fitting.length === 1) return delimiter
  const isHeader = /\bhole\b/i.test(headerLine) && /\bwhat\b/i.test(headerLine)
  if (!isHeader) {
    throw new Failure(
      'MAR-IMPORT-015',
      'The first line is not the header of a hole table. It must read: hole,what,side,from_yd,to_yd,near_yd,far_yd,note (or _m for metres).',
      `${where}, line 1`,
    )
  }
  throw new Failure(
    'MAR-IMPORT-017',
    'It is not clear which character separates the columns. Use commas, semicolons or tabs, one kind only.',
    `${where}, line 1`,
  )
}

/** Metres in a unit by the words for it. */
export const METRES_PER: Readonly<Record<string, number>> = {
  m: 1,
  metre: 1,
  metres: 1,
  meter: 1,
  meters: 1,
  yd: METRES_PER_YARD,
  yds: METRES_PER_YARD,
  yard: METRES_PER_YARD,
  yards: METRES_PER_YARD,
}

/** Reads the header. Throws `MAR-IMPORT-015` (a column is missing) and `MAR-IMPORT-016` (a distance without known unit). */
export function readColumns(header: readonly string[], where: string): TableColumns {
  const place = `${where}, line 1`
  const headings = header.map(tidy)
  const find = (name: string): number => headings.indexOf(name)
  const problems: string[] = []
  const known = new Set<string>(['hole', 'what', 'side', 'note'])
  const distance = (name: DistanceColumn): { index: number; metresPerUnit: number } => {
    const index = headings.findIndex((heading) => heading === name || heading.startsWith(`${name}_`))
    const heading = headings[index]
    if (heading === undefined) return { index: -1, metresPerUnit: 1 }
    known.add(heading)
    const unit = heading.slice(name.length + 1)
    const metresPerUnit = METRES_PER[unit]
    if (metresPerUnit === undefined)
      problems.push(unit === '' ? `“${name}” has no unit` : `“${unit}” in “${heading}” is no unit`)
    return { index, metresPerUnit: metresPerUnit ?? 1 }
  }
  const distances = {
    from: distance('from'),
    to: distance('to'),
    near: distance('near'),
    far: distance('far'),
  }
  const missing = [
    ...['hole', 'what', 'side'].filter((name) => find(name) === -1),
    ...DISTANCE_COLUMNS.filter((name) => distances[name].index === -1).map(
      (name) => `${name}_yd or ${name}_m`,
    ),
  ]
  if (missing.length > 0) {
    throw new Failure('MAR-IMPORT-015', `The header lacks ${missing.join(', ')}.`, place)
  }
  if (problems.length > 0) {
    throw new Failure(
      'MAR-IMPORT-016',
      `${problems.join('; ')}. Write yards as ${DISTANCE_COLUMNS[0]}_yd or metres as ${DISTANCE_COLUMNS[0]}_m, and so on.`,
      place,
    )
  }
  return {
    hole: find('hole'),
    what: find('what'),
    side: find('side'),
    note: find('note'),
    distances,
    unknown: headings.filter((heading) => heading !== '' && !known.has(heading)),
    count: headings.length,
  }
}

function tidy(cell: string): string {
  return cell
    .replace(/^\uFEFF/, '')
    .trim()
    .replace(/^"|"$/g, '')
    .toLowerCase()
    .replace(/[\s(]+/g, '_')
    .replace(/\)$/, '')
}
