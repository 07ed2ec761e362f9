import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'
import { type LonLat, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { type LaidHole, layHole } from './hole-table/lay-hole.ts'
import { farStart, unplaced } from './hole-table/table-faults.ts'
import { readTableLines } from './hole-table/table-lines.ts'
import { readRow, type TableRow, type UnreadRow } from './hole-table/table-row.ts'
import { fromStart, type LineStart, positionOf, readLineStart } from './line-start.ts'
import { TABLE_GRID } from './settings.ts'
import type { SourceReading } from './source-reading.ts'

/**
 * Where the holes of a table are laid that does not say where on the earth it is: the place is invented, at 0° north
 * 0° east in the open sea. Bearings of such a course mean nothing; distances do.
 */
const TABLE_ORIGIN: LonLat = [0, 0]

/**
 * A typed hole table (`hole,what,side,from,to,near,far,note` with `_yd` or `_m` on the distances) as features: each
 * hole where its `start` row says, else straight to the north, holes far apart. `isPlaced` false passes over what start
 * rows say, so that a hole lies in the plane of its own rows. Throws `MAR-IMPORT-015` to `017` when the
 * header cannot be read and `MAR-IMPORT-020` when no row follows; a row that cannot be read stays in the list with
 * the reason.
 */
export function parseHoleTable(text: string, where: string, isPlaced: boolean = true): SourceReading {
  const { columns, lines } = readTableLines(text, where)
  const read = lines.map(({ cells, line, isTorn }) =>
    isTorn ? tornRow(line) : readRow(cells, line, columns),
  )
  const rows = read.filter((row): row is TableRow => !('reason' in row))
  const unread = read.filter((row): row is UnreadRow => 'reason' in row)
  if (read.length === 0)
    throw new Failure('MAR-IMPORT-020', 'The hole table has a header but no rows.', where)
  const starts = isPlaced ? startsOf(rows) : new Map<string, LineStart>()
  const [first] = starts.values()
  const origin = first === undefined ? TABLE_ORIGIN : positionOf(first)
  const laid = layHoles(rows, starts, origin)
  const name = where.replace(/^.*[\\/]/, '').replace(/\.[a-z]+$/i, '')
  return {
    kind: 'hole-table',
    features: [...laid.features, ...unread.map(unreadFeature)],
    faults: [...columns.unknown.map((heading) => unknownColumn(heading, where)), ...laid.faults],
    collection: {
      marram: { schema: 'course/1', name, origin },
      'marram:source':
        first === undefined ? 'typed hole table; its place on the earth is invented' : 'typed hole table',
    },
    vertices: rows.filter((row) => row.what === 'bend').length,
  }
}

function layHoles(
  rows: readonly TableRow[],
  starts: ReadonlyMap<string, LineStart>,
  origin: LonLat,
): LaidHole {
  const byHole = new Map<string, TableRow[]>()
  for (const row of rows) byHole.set(row.hole, [...(byHole.get(row.hole) ?? []), row])
  const plane = tangentPlane(origin)
  const features: SurveyFeature[] = []
  const faults: Fault[] = []
  for (const [index, [ref, own]] of [...byHole].entries()) {
    const start = starts.get(ref)
    const hasRow = own.some(({ what }) => what === 'start')
    if (start === undefined && !hasRow && starts.size > 0) faults.push(unplaced(ref))
    const away = start === undefined ? 0 : Math.hypot(...plane.toPlane(positionOf(start)))
    if (away > FURTHEST_START_METRES) faults.push(farStart(ref, away))
    const east = (index % TABLE_GRID.columns) * TABLE_GRID.across
    // Beside holes that lie where they are, an invented place keeps clear of them.
    const north =
      (Math.floor(index / TABLE_GRID.columns) + (starts.size > 0 ? TABLE_GRID.clear : 0)) * TABLE_GRID.along
    const hole = layHole(
      ref,
      own,
      start === undefined ? ([x, y]) => plane.toLonLat([x + east, y + north]) : fromStart(start),
      start?.headingDegrees ?? null,
    )
    features.push(...hole.features)
    faults.push(...hole.faults)
  }
  return { features, faults }
}

/** What the first start row of each hole says, where it can be read. */
function startsOf(rows: readonly TableRow[]): Map<string, LineStart> {
  const starts = new Map<string, LineStart>()
  const seen = new Set<string>()
  for (const { what, hole, note } of rows) {
    if (what !== 'start' || seen.has(hole)) continue
    seen.add(hole)
    const start = readLineStart(note)
    if (start !== null) starts.set(hole, start)
  }
  return starts
}

/** Further apart than this are no two holes of a course, metres: a sign or a digit is wrong. Our assumption. */
const FURTHEST_START_METRES = 10_000

/** A quotation mark without its fellow takes rows into one cell, so none of it is to be trusted. */
function tornRow(line: number): UnreadRow {
  const reason = 'a quotation mark is not closed, so this row and those below it were read as one'
  return { line, hole: '', what: '', code: 'MAR-IMPORT-019', reason }
}

// Without tags, so that it is asked about and not taken for something that has no bearing on play.
function unreadFeature(row: UnreadRow): SurveyFeature {
  const reason = `${row.what || 'a row'} of hole ${row.hole || '?'}: ${row.reason}`
  return { id: `line ${row.line}`, tags: {}, geometry: { kind: 'none', reason, code: row.code } }
}

function unknownColumn(heading: string, where: string): Fault {
  return {
    severity: 'warning',
    code: 'MAR-IMPORT-015',
    message: `The column “${heading}” is not known; it was ignored.`,
    place: `${where}, line 1`,
    advice: 'Use hole, what, side, from, to, near, far and note.',
  }
}
