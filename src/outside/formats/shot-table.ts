import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { DateOrder } from './shots/column-meaning.ts'
import { farDates } from './shots/far-dates.ts'
import { type FoundTable, findTable } from './shots/find-table.ts'
import { mixedUnits } from './shots/mixed-units.ts'
import { settleDate } from './shots/parse-cells.ts'
import { type ColumnMapping, parseMapping, parseMappingJson } from './shots/parse-mapping.ts'
import { type ReadShot, shotRowReader } from './shots/read-shot-row.ts'
import { repeatedShots } from './shots/repeated-shots.ts'
import { rowMark } from './shots/row-mark.ts'
import { type ShotColumns, shotColumns } from './shots/shot-columns.ts'
import {
  columnFaults,
  farDatesFault,
  mixedUnitsFault,
  ownUnitFault,
  passedOverFault,
  repeatedFault,
  rowFault,
  TORN_ROW,
} from './shots/shot-faults.ts'
import { tableRows } from './shots/table-rows.ts'

/** A text and the name of the file it came from. */
export interface NamedText {
  readonly text: string
  readonly name: string
}

/** Shots of one player out of tables, and what became of every row: `rows` = shots + repeated + set aside + unread. */
export interface ShotReading {
  readonly shots: readonly ShotRecord[]
  /** Filled rows below the headers. */
  readonly rows: number
  /** Copies of a shot that stands elsewhere. */
  readonly repeated: number
  /** Rows that are no full shots: putts, partial swings, means. */
  readonly setAside: number
  /** Rows that could not be read; each is a fault of severity error. */
  readonly unread: number
  readonly faults: readonly Fault[]
}

/** Reads `--columns`. Throws `MAR-SHOTS-002`. */
export function readMapping(text: string): ColumnMapping {
  return parseMapping(text, '--columns')
}

/** Reads a mapping file. Throws `MAR-SHOTS-002`. */
export function readMappingFile({ text, name }: NamedText): ColumnMapping {
  return parseMappingJson(text, name)
}

/**
 * Shots of one player from tables with our own columns, or with any columns by a mapping. Rows that cannot be read
 * are faults with their line, and all others are in; shots written twice, in one file or in two, count once; carries
 * that look like two units are asked about. Throws what {@link readTable} throws.
 */
export function readShotTables(files: readonly NamedText[], mapping: ColumnMapping | null): ShotReading {
  const tables = files.map((file) => readTable(file, mapping))
  const all = tables.flatMap(({ shots }) => shots)
  const places = tables.flatMap(({ lines }, file) => lines.map((line) => ({ file, line })))
  const repeated = repeatedShots(
    all,
    tables.flatMap(({ marks }) => marks),
  )
  const copies = new Set(repeated)
  const placeOf = (place: number): string => {
    const at = places[place]
    return `${files[at?.file ?? 0]?.name ?? ''}, line ${at?.line ?? 0}`
  }
  const far = farDates(all)
  const undated = new Set(far.flatMap((one) => one.places))
  const shots = all.flatMap((shot, place) =>
    copies.has(place) ? [] : [undated.has(place) ? { ...shot, date: null } : shot],
  )
  const where = files.map(({ name }) => name).join(', ')
  return {
    shots,
    rows: sum(tables.map(({ rows }) => rows)),
    repeated: repeated.length,
    setAside: sum(tables.map(({ setAside }) => setAside)),
    unread: sum(tables.map(({ unread }) => unread)),
    faults: [
      ...tables.flatMap(({ faults }) => faults),
      ...(repeated.length === 0 ? [] : [repeatedFault(repeated.map(placeOf))]),
      ...far.map((one) => {
        const [place = 0] = one.places
        return farDatesFault(one, all[place]?.date ?? '', placeOf(place))
      }),
      ...mixedUnits(shots).map((mixed) => mixedUnitsFault(mixed, where)),
    ],
  }
}

interface ReadTable extends Omit<ShotReading, 'repeated'> {
  /** Line and mark of each shot. */
  readonly lines: readonly number[]
  readonly marks: readonly string[]
}

/**
 * One table. Throws `MAR-SHOTS-001` to `005` when its columns are not clear, `MAR-SHOTS-017` when it has no rows and
 * `MAR-SHOTS-018` when its dates do not show which number is the day.
 */
function readTable({ text, name }: NamedText, mapping: ColumnMapping | null): ReadTable {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/)
  const table = findTable(lines, mapping, name)
  const columns = shotColumns(table, mapping, firstRowOf(lines, table), name)
  const readRow = shotRowReader(columns)
  const reads: ReadShot[] = []
  const shotLines: number[] = []
  const marks: string[] = []
  const faults = columnFaults(columns, table.headerLine === 0 ? name : `${name}, line ${table.headerLine}`)
  let [setAside, unread] = [0, 0]
  for (const { cells, line, isTorn } of tableRows(lines, table.firstRow, table.delimiter, columns.count)) {
    const read = isTorn ? TORN_ROW : readRow(cells)
    if ('shot' in read) {
      reads.push(read)
      shotLines.push(line)
      marks.push(rowMark(cells))
      continue
    }
    if (read.isFault) unread += 1
    else setAside += 1
    faults.push(rowFault(read, `${name}, line ${line}`))
  }
  const rows = reads.length + setAside + unread
  if (rows === 0) throw new Failure('MAR-SHOTS-017', 'The table has a header but no rows.', name)
  const dated = settleDates(reads, columns, name)
  return {
    shots: dated.shots,
    rows,
    setAside,
    unread,
    faults: [...faults, ...keptFaults(reads, dated.passedOver, shotLines, name)],
    lines: shotLines,
    marks,
  }
}

function firstRowOf(
  lines: readonly string[],
  { firstRow, delimiter, headings }: FoundTable,
): readonly string[] {
  for (const { cells } of tableRows(lines, firstRow, delimiter, headings.length)) return cells
  return []
}

/** Dates such as `5/6/2026` by the order that the mapping gives, else by the days over 12 among them. */
function settleDates(
  reads: readonly ReadShot[],
  { date, dateOrder }: ShotColumns,
  where: string,
): { readonly shots: readonly ShotRecord[]; readonly passedOver: readonly number[] } {
  const open = reads.flatMap(({ openDate }) => (openDate === null ? [] : [openDate]))
  if (open.length === 0) return { shots: reads.map(({ shot }) => shot), passedOver: [] }
  const order = dateOrder ?? orderOf(open)
  if (order === null) {
    const { first, second, year } = open[0] ?? { first: 0, second: 0, year: 0 }
    throw new Failure(
      'MAR-SHOTS-018',
      `It is not clear which number of ${first}/${second}/${year} is the day. Say it with --columns: the heading of the dates and =date:day-first or =date:month-first, beside the other columns.`,
      `${where}, column ${date + 1}`,
    )
  }
  const passedOver: number[] = []
  const shots = reads.map(({ shot, openDate }, place) => {
    if (openDate === null) return shot
    const settled = settleDate(openDate, order)
    if (settled === null) passedOver.push(place)
    return { ...shot, date: settled }
  })
  return { shots, passedOver }
}

function orderOf(open: readonly { readonly first: number; readonly second: number }[]): DateOrder | null {
  const isDayFirst = open.some(({ first }) => first > 12)
  const isMonthFirst = open.some(({ second }) => second > 12)
  if (isDayFirst && isMonthFirst) {
    const days = open.filter(({ first, second }) => first > 12 && second <= 12).length
    const months = open.filter(({ first, second }) => second > 12 && first <= 12).length
    return days === months ? null : days > months ? 'day-first' : 'month-first'
  }
  return isDayFirst ? 'day-first' : isMonthFirst ? 'month-first' : null
}

/** What was passed over in rows that were kept: words nobody knows, and units of single cells. */
function keptFaults(
  reads: readonly ReadShot[],
  wrongDates: readonly number[],
  lines: readonly number[],
  where: string,
): Fault[] {
  const words = new Map<string, { column: string; word: string; lines: number[] }>()
  const note = (column: string, word: string, line: number): void => {
    const key = `${column} ${word}`
    const known = words.get(key)
    if (known === undefined) words.set(key, { column, word, lines: [line] })
    else known.lines.push(line)
  }
  let [ownUnits, firstOwnUnit] = [0, 0]
  for (const [place, { passedOver, hasOwnUnit }] of reads.entries()) {
    const line = lines[place] ?? 0
    for (const [column, word] of passedOver) note(column, word, line)
    if (!hasOwnUnit) continue
    ownUnits += 1
    firstOwnUnit ||= line
  }
  for (const place of wrongDates) {
    const { first = 0, second = 0, year = 0 } = reads[place]?.openDate ?? {}
    note('date', `${first}/${second}/${year}`, lines[place] ?? 0)
  }
  return [
    ...[...words.values()].map(({ column, word, lines: own }) => passedOverFault(column, word, own, where)),
    ...(ownUnits === 0 ? [] : [ownUnitFault(ownUnits, firstOwnUnit, where)]),
  ]
}

function sum(counts: readonly number[]): number {
  return counts.reduce((total, count) => total + count, 0)
}
