import type { FaultCode } from '#faults/codes.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { parseGreenNote, type TypedGreen } from '../green-note.ts'
import { readMeasures } from './read-measures.ts'
import { DISTANCE_COLUMNS, type DistanceColumn, type TableColumns } from './table-columns.ts'

/** What a row of a hole table can be; `bend` turns the line of the hole, `start` says where on the earth it begins. */
export const TABLE_KINDS = [
  'fairway',
  'water-red',
  'water-yellow',
  'bunker',
  'trees',
  'scrub',
  'heavy',
  'out',
  'green',
  'tee',
  'ditch-red',
  'ditch-yellow',
  'bend',
  'start',
] as const
export type TableKind = (typeof TABLE_KINDS)[number]

/** One object of a hole, distances in metres; `null` where the cell is blank. */
export interface TableRow {
  /** Line of the file, the header being 1. */
  readonly line: number
  readonly hole: string
  readonly what: TableKind
  readonly side: 'left' | 'right' | 'across'
  readonly from: number | null
  readonly to: number | null
  readonly near: number | null
  readonly far: number | null
  /** Its words, without what they measure. */
  readonly note: string
  /** Length of the hole on the card from these markers. */
  readonly cardMetres: number | null
  /** Corners beside (right positive) and along the first leg, gone on straight; they stand for from, to, near and far. */
  readonly outline: readonly Point[] | null
  /** What is typed of the slope of a green; `null` for other ground. */
  readonly green: TypedGreen | null
  /** Metres of one unit of the table. */
  readonly metresPerUnit: number
}

/** A row that cannot be read, and why. */
export interface UnreadRow {
  readonly line: number
  readonly hole: string
  readonly what: string
  readonly code: FaultCode
  readonly reason: string
}

class Unread extends Error {
  readonly code: FaultCode

  constructor(code: FaultCode, reason: string) {
    super(reason)
    this.code = code
  }
}

/** The cells of one line as a row, or why they are none. */
export function readRow(cells: readonly string[], line: number, columns: TableColumns): TableRow | UnreadRow {
  const cell = (index: number): string => (cells[index] ?? '').trim()
  const hole = cell(columns.hole)
  const what = cell(columns.what)
    .toLowerCase()
    .replace(/[\s_]+/g, '-')
  try {
    if (cells.length > columns.count) {
      throw new Unread(
        'MAR-IMPORT-019',
        'it has more cells than the header; put decimal commas in quotes, or separate the columns by semicolons',
      )
    }
    if (hole === '') throw new Unread('MAR-IMPORT-019', '“hole” is blank')
    const distances = Object.fromEntries(
      DISTANCE_COLUMNS.map((name) => [
        name,
        readDistance(name, cell(columns.distances[name].index), columns),
      ]),
    ) as Record<DistanceColumn, number | null>
    const note = columns.note === -1 ? '' : cell(columns.note)
    const { metresPerUnit } = columns.distances.from
    const measured = readMeasures(note, metresPerUnit)
    const { cardMetres, outline } = measured
    const { green, words } = what === 'green' ? parseGreenNote(measured.words) : { ...measured, green: null }
    if (outline !== null && outline.length < 3)
      throw new Unread(
        'MAR-IMPORT-019',
        'an outline needs three corners or more, each as along:beside, such as outline 225:-14 245:-14 245:-24',
      )
    return {
      line,
      hole,
      what: readKind(what),
      side: readSide(cell(columns.side)),
      note: what === 'start' ? note : words,
      cardMetres,
      outline,
      green,
      metresPerUnit,
      ...distances,
    }
  } catch (cause) {
    if (cause instanceof Unread) return { line, hole, what, code: cause.code, reason: cause.message }
    throw cause
  }
}

function readKind(text: string): TableKind {
  const kind = TABLE_KINDS.find((known) => known === text)
  if (kind) return kind
  throw new Unread('MAR-IMPORT-018', `“${text}” is none of ${TABLE_KINDS.join(', ')}`)
}

function readSide(text: string): TableRow['side'] {
  const side = text.toLowerCase()
  if (side === 'left' || side === 'right' || side === 'across') return side
  if (side === '') return 'across'
  throw new Unread('MAR-IMPORT-019', `“side” is “${text}”; it is left, right or across`)
}

function readDistance(name: DistanceColumn, text: string, columns: TableColumns): number | null {
  if (text === '') return null
  if (!/^[+-]?\d+(?:[.,]\d+)?$/.test(text))
    throw new Unread('MAR-IMPORT-019', `“${name}” is “${text}”, which is no number`)
  // A comma can only be for decimals: with one for thousands the distance would be longer than any hole.
  const metres = Number(text.replace(',', '.')) * columns.distances[name].metresPerUnit
  if (Math.abs(metres) > 1000)
    throw new Unread('MAR-IMPORT-019', `“${name}” is “${text}”, further than any hole is long`)
  return metres
}
