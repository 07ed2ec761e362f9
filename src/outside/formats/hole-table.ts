import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { type LaidHole, layHole } from './hole-table/lay-hole.ts'
import { readTableLines } from './hole-table/table-lines.ts'
import { readRow, type TableRow, type UnreadRow } from './hole-table/table-row.ts'
import { TABLE_GRID } from './settings.ts'
import type { SourceReading } from './source-reading.ts'

/**
 * Where the holes of a table are laid: a table does not say where on the earth it is, so the place is invented, at
 * 0° north 0° east in the open sea. Bearings of such a course mean nothing; distances do.
 */
const TABLE_ORIGIN: readonly [longitude: number, latitude: number] = [0, 0]

/**
 * A typed hole table (`hole,what,side,from,to,near,far,note` with `_yd` or `_m` on the distances) as features: each
 * hole straight to the north unless it has `bend` rows, holes far apart. Throws `MAR-IMPORT-015` to `017` when the
 * header cannot be read and `MAR-IMPORT-020` when no row follows; a row that cannot be read stays in the list with
 * the reason.
 */
export function parseHoleTable(text: string, where: string): SourceReading {
  const { columns, lines } = readTableLines(text, where)
  const read = lines.map(({ cells, line, isTorn }) =>
    isTorn ? tornRow(line) : readRow(cells, line, columns),
  )
  const rows = read.filter((row): row is TableRow => !('reason' in row))
  const unread = read.filter((row): row is UnreadRow => 'reason' in row)
  if (read.length === 0)
    throw new Failure('MAR-IMPORT-020', 'The hole table has a header but no rows.', where)
  const laid = layHoles(rows)
  const name = where.replace(/^.*[\\/]/, '').replace(/\.[a-z]+$/i, '')
  return {
    kind: 'hole-table',
    features: [...laid.features, ...unread.map(unreadFeature)],
    faults: [...columns.unknown.map((heading) => unknownColumn(heading, where)), ...laid.faults],
    collection: {
      marram: { schema: 'course/1', name, origin: TABLE_ORIGIN },
      'marram:source': 'typed hole table; its place on the earth is invented',
    },
    vertices: rows.filter((row) => row.what === 'bend').length,
  }
}

function layHoles(rows: readonly TableRow[]): LaidHole {
  const byHole = new Map<string, TableRow[]>()
  for (const row of rows) byHole.set(row.hole, [...(byHole.get(row.hole) ?? []), row])
  const plane = tangentPlane(TABLE_ORIGIN)
  const features: SurveyFeature[] = []
  const faults: Fault[] = []
  for (const [index, [ref, own]] of [...byHole].entries()) {
    const east = (index % TABLE_GRID.columns) * TABLE_GRID.across
    const north = Math.floor(index / TABLE_GRID.columns) * TABLE_GRID.along
    const hole = layHole(ref, own, ([x, y]) => plane.toLonLat([x + east, y + north]))
    features.push(...hole.features)
    faults.push(...hole.faults)
  }
  return { features, faults }
}

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
