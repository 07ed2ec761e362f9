import Papa from 'papaparse'
import type { Point } from '#numbers/geometry/point.ts'
import { bendDegrees } from './hole-table/bend-degrees.ts'
import { readMeasures } from './hole-table/read-measures.ts'
import { readNote } from './hole-table/read-note.ts'
import { readTableLines } from './hole-table/table-lines.ts'
import type { TableKind } from './hole-table/table-row.ts'
import { startWords } from './line-start.ts'
import { METRES_PER_TABLE_UNIT, type TableUnit, tableFigure } from './table-unit.ts'

/** One row of a hole table as a person types it: cells may be blank or wrong. */
export interface TypedRow {
  /** A {@link TableKind}, or whatever stands there. */
  readonly what: TableKind | (string & {})
  readonly side: string
  readonly from: string
  /** Of a tee the length on its card, of a bend its degrees. */
  readonly to: string
  readonly near: string
  readonly far: string
  readonly note: string
  /** Corners that were traced, metres beside (right positive) and along the first leg; they stand for the four distances. */
  readonly outline: readonly Point[] | null
}

/** A hole as it is typed. */
export interface TypedHole {
  readonly ref: string
  readonly par: string
  /** Stroke index. */
  readonly index: string
  readonly rows: readonly TypedRow[]
}

/** A hole table as it is typed. */
export interface TypedTable {
  readonly unit: TableUnit
  readonly holes: readonly TypedHole[]
}

/** A row with nothing in it. */
export const BLANK_ROW: TypedRow = {
  what: '',
  side: '',
  from: '',
  to: '',
  near: '',
  far: '',
  note: '',
  outline: null,
}

/** Whether a row says anything. */
export function isBlankRow(row: TypedRow): boolean {
  const { outline, ...cells } = row
  return outline === null && Object.values(cells).every((cell) => cell.trim() === '')
}

/**
 * The table as text, read by `parseHoleTable` and back by {@link parseTypedTable}. Blank rows are left out, every
 * other has a line of its own in the order of the holes and their rows: the first is line 2.
 */
export function encodeTypedTable({ unit, holes }: TypedTable): string {
  const header = [
    'hole',
    'what',
    'side',
    ...['from', 'to', 'near', 'far'].map((name) => `${name}_${unit}`),
    'note',
  ]
  const lines = holes.flatMap((hole) => {
    const rows = hole.rows.filter((row) => !isBlankRow(row))
    const says = [({ what }: TypedRow) => what === 'green', ({ what }: TypedRow) => what !== 'start']
    const card = says.map((one) => rows.findIndex(one)).find((index) => index >= 0) ?? 0
    return rows.map((row, index) => encodeRow(hole, row, index === card, unit))
  })
  return `${Papa.unparse([header, ...lines], { newline: '\n' })}\n`
}

function encodeRow(hole: TypedHole, row: TypedRow, saysCard: boolean, unit: TableUnit): string[] {
  const to = row.to.trim()
  const isMeasured = row.what !== 'tee' && row.what !== 'bend'
  const note = [
    saysCard && hole.par.trim() !== '' ? `par ${hole.par.trim()}` : '',
    saysCard && hole.index.trim() !== '' ? `index ${hole.index.trim()}` : '',
    row.note.trim(),
    row.what === 'tee' && to !== '' ? `card ${to} ${unit}` : '',
    row.what === 'bend' && to !== '' ? `${to} deg` : '',
    row.outline === null ? '' : outlineText(row.outline, unit),
  ]
  const cells = row.outline === null ? [row.from, isMeasured ? to : '', row.near, row.far] : ['', '', '', '']
  return [hole.ref, row.what, row.side, ...cells, note.filter((part) => part !== '').join(', ')]
}

function outlineText(corners: readonly Point[], unit: TableUnit): string {
  const pairs = corners.map(([beside, along]) => `${tableFigure(along, unit)}:${tableFigure(beside, unit)}`)
  return `outline ${pairs.join(' ')}`
}

/**
 * A hole table as it was typed, every cell as it stands, holes in the order of their first rows. Throws `MAR-IMPORT-015`
 * to `017` when the header cannot be read.
 */
export function parseTypedTable(text: string, where: string): TypedTable {
  const { columns, lines } = readTableLines(text, where)
  const { from } = columns.distances
  const unit: TableUnit = from.metresPerUnit === 1 ? 'm' : 'yd'
  const holes = new Map<string, TypedHole>()
  for (const { cells } of lines) {
    const cell = (index: number): string => (cells[index] ?? '').trim()
    const distance = (name: 'from' | 'to' | 'near' | 'far'): string => {
      const { index, metresPerUnit } = columns.distances[name]
      return inUnit(cell(index), metresPerUnit, unit)
    }
    const ref = cell(columns.hole)
    const hole = holes.get(ref) ?? { ref, par: '', index: '', rows: [] }
    const what = cell(columns.what)
      .toLowerCase()
      .replaceAll(/[\s_]+/g, '-')
    const measured = readMeasures(columns.note === -1 ? '' : cell(columns.note), METRES_PER_TABLE_UNIT[unit])
    const { par, index, rest } = readNote(measured.words)
    const degrees = what === 'bend' ? bendDegrees(rest) : null
    const card = what === 'tee' ? measured.cardMetres : null
    const row: TypedRow = {
      what,
      side: cell(columns.side).toLowerCase(),
      from: distance('from'),
      to:
        degrees !== null
          ? String(degrees)
          : card !== null
            ? tableFigure(card, unit)
            : what === 'tee'
              ? ''
              : distance('to'),
      near: distance('near'),
      far: distance('far'),
      note: what === 'start' ? startWords(cell(columns.note)) : degrees === null ? rest : '',
      outline: measured.outline,
    }
    holes.set(ref, {
      ref,
      par: hole.par === '' ? (par ?? '') : hole.par,
      index: hole.index === '' ? (index ?? '') : hole.index,
      rows: [...hole.rows, row],
    })
  }
  return { unit, holes: [...holes.values()] }
}

/** A cell of a column with another unit than the first, in that of the first; what is no number stays as it is. */
function inUnit(text: string, metresPerUnit: number, unit: TableUnit): string {
  const number = Number(text.replace(',', '.'))
  if (text === '' || metresPerUnit === METRES_PER_TABLE_UNIT[unit] || !Number.isFinite(number)) return text
  return tableFigure(number * metresPerUnit, unit)
}
