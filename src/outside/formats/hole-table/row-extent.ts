import type { FaultCode } from '#faults/codes.ts'
import { TABLE_DEFAULTS } from '../settings.ts'
import type { TableRow } from './table-row.ts'

/** Where an object lies: metres along the line, and off it with left negative. */
export interface RowExtent {
  readonly from: number
  readonly to: number
  readonly left: number
  readonly right: number
  /** What was taken where cells are blank, in words; empty when nothing was. */
  readonly assumed: readonly string[]
}

/** Why a row has no extent. */
export interface NoExtent {
  readonly code: FaultCode
  readonly reason: string
}

/**
 * The extent of a row on a hole so long (metres; 0 while it is not known).
 *
 * Along the line: `from` to `to`. Off the line, on a side: `near` to `far`. Right across: `near` negative and `far`
 * positive are the left and the right edge; with `near` blank or 0, `far` is the whole width, half on each side; with
 * `near` above 0 they are the distances to the left and to the right edge, except for a green, whose width is then
 * `far` − `near` as on a side.
 */
export function rowExtent(row: TableRow, lengthMetres: number): RowExtent | NoExtent {
  const assumed: string[] = []
  const along = extentAlong(row, lengthMetres, assumed)
  if ('reason' in along) return along
  const off = row.side === 'across' ? extentAcross(row, along, assumed) : extentOnSide(row, assumed)
  if ('reason' in off) return off
  return { ...along, ...off, assumed }
}

function isDitch(row: TableRow): boolean {
  return row.what === 'ditch-red' || row.what === 'ditch-yellow'
}

function unread(reason: string): NoExtent {
  return { code: 'MAR-IMPORT-019', reason }
}

function extentAlong(
  row: TableRow,
  length: number,
  assumed: string[],
): { from: number; to: number } | NoExtent {
  const { from, to } = row
  if (from !== null && to !== null) {
    return to > from ? { from, to } : unread('“to” must be further from the tee than “from”')
  }
  if (from !== null) {
    const deep =
      row.what === 'green'
        ? TABLE_DEFAULTS.greenDepth
        : row.what === 'bunker'
          ? TABLE_DEFAULTS.bunkerSize
          : isDitch(row) && row.side === 'across'
            ? TABLE_DEFAULTS.ditchWidth
            : null
    if (deep !== null) {
      if (!isDitch(row)) assumed.push(`${deep} m from front to back`)
      return { from, to: from + deep }
    }
  }
  if (row.side === 'across' || row.what === 'green') {
    return unread(from === null ? '“from” is blank' : '“to” is blank')
  }
  const end = {
    from: from ?? -TABLE_DEFAULTS.reachBeyondEnds,
    to: to ?? length + TABLE_DEFAULTS.reachBeyondEnds,
  }
  return end.to > end.from ? end : unread('it lies behind the green')
}

function extentOnSide(row: TableRow, assumed: string[]): { left: number; right: number } | NoExtent {
  const { near, far } = row
  if (near === null && far === null) return unread('“near” and “far” are blank: how far off the line is it?')
  if (near === null) assumed.push('its near edge on the line')
  const inner = near ?? 0
  const outer = far ?? inner + depthOff(row, inner, assumed)
  if (outer <= inner) return unread('“far” must be further off the line than “near”')
  return row.side === 'left' ? { left: -outer, right: -inner } : { left: inner, right: outer }
}

function depthOff(row: TableRow, inner: number, assumed: string[]): number {
  if (isDitch(row)) return TABLE_DEFAULTS.ditchWidth
  if (row.what === 'bunker') {
    assumed.push(`${TABLE_DEFAULTS.bunkerSize} m wide`)
    return TABLE_DEFAULTS.bunkerSize
  }
  // Out of bounds has no other side, so nothing is assumed by giving it one far out.
  if (row.what !== 'out') assumed.push(`it reaches ${TABLE_DEFAULTS.reachOffLine} m off the line`)
  return Math.max(TABLE_DEFAULTS.reachOffLine - inner, TABLE_DEFAULTS.bunkerSize)
}

function extentAcross(
  row: TableRow,
  along: { from: number; to: number },
  assumed: string[],
): { left: number; right: number } | NoExtent {
  const { near, far } = row
  if (far === null) {
    if (near !== null && near !== 0) return unread('“far” is blank')
    return centred(usualWidth(row, along, assumed))
  }
  if (near === null || near === 0) return far > 0 ? centred(far) : unread('“far” must be more than 0')
  if (near > 0 && row.what === 'green' && far > near) return centred(far - near)
  const left = near > 0 ? -near : near
  return far > left ? { left, right: far } : unread('“far” must lie right of “near”')
}

function centred(width: number): { left: number; right: number } {
  return { left: -width / 2, right: width / 2 }
}

function usualWidth(row: TableRow, along: { from: number; to: number }, assumed: string[]): number {
  const width =
    row.what === 'fairway'
      ? TABLE_DEFAULTS.fairwayWidth
      : row.what === 'green'
        ? along.to - along.from
        : row.what === 'bunker'
          ? TABLE_DEFAULTS.bunkerSize
          : null
  if (width === null) return 2 * TABLE_DEFAULTS.reachOffLine
  assumed.push(`${width.toFixed(0)} m wide`)
  return width
}
