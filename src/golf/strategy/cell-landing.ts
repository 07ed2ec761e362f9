import type { Places } from './places.ts'
import { type RestTable, restAt } from './rest-table.ts'
import { outcomeAt, type ShotTable } from './shot-table.ts'

/** The coarse cell in which strike `k` lands from a coarse cell; what leaves the raster lands on its nearest edge. */
export function coarseLanding(
  { coarse }: Places,
  table: ShotTable,
  k: number,
  column: number,
  row: number,
): number {
  const { columns, rows } = coarse
  let atColumn = column + (table.cellDx[k] as number)
  let atRow = row + (table.cellDy[k] as number)
  atColumn = atColumn < 0 ? 0 : atColumn >= columns ? columns - 1 : atColumn
  atRow = atRow < 0 ? 0 : atRow >= rows ? rows - 1 : atRow
  return atRow * columns + atColumn
}

/** What becomes of strike `k` from a coarse cell when nothing catches it; `coarse` is the coarse cell in which it lands. */
export function restOf(
  places: Places,
  table: ShotTable,
  k: number,
  column: number,
  row: number,
  coarse: number,
): number {
  if (places.isNearPin[coarse] === 0) return restAt(places, table.rest[k] as RestTable, coarse)
  const { fine, finePerCoarse } = places
  const fineColumn = finePerCoarse * column + (table.fineDx[k] as number)
  const fineRow = finePerCoarse * row + (table.fineDy[k] as number)
  const isFine = fineColumn >= 0 && fineColumn < fine.columns && fineRow >= 0 && fineRow < fine.rows
  const finePlace = isFine ? (places.finePlace[fineRow * fine.columns + fineColumn] as number) : -1
  return outcomeAt(places, table, k, finePlace < 0 ? coarse : finePlace)
}
