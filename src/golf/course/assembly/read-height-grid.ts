import type { Point } from '#numbers/geometry/point.ts'
import type { HeightGrid } from '../course.ts'
import { GREEN_GRID_CELL_METRES, MOST_GRID_NODES } from '../settings.ts'
import type { LonLat, SurveyFeature } from '../survey-feature.ts'
import { placeOf, type Tally } from './tally.ts'

/**
 * The grid of heights on a green, `marram:height_grid` of the course file, on the course plane: columns run east, rows
 * south. `null` when there is none, or when it cannot be read, which is a fault.
 */
export function readHeightGrid(
  feature: SurveyFeature,
  toPlane: (position: LonLat) => Point,
  tally: Tally,
): HeightGrid | null {
  const text = feature.tags['marram:height_grid']
  if (text === undefined) return null
  const found = parseGrid(text)
  if (typeof found === 'string') {
    tally.fault(
      'warning',
      'MAR-IMPORT-033',
      placeOf(feature),
      `The height grid of ${placeOf(feature)} was left out: ${found}.`,
      'Correct marram:height_grid; docs/course-file.md describes it.',
    )
    return null
  }
  const { cell, northWest, rows } = found
  return {
    origin: toPlane(northWest),
    stepX: [cell, 0],
    stepY: [0, -cell],
    columns: rows[0]?.length ?? 0,
    rows: rows.length,
    heights: rows.flat(),
  }
}

interface WrittenGrid {
  readonly cell: number
  readonly northWest: LonLat
  readonly rows: readonly (readonly number[])[]
}

/** The grid as written, or what is wrong with it. */
function parseGrid(text: string): WrittenGrid | string {
  const value = jsonOf(text)
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return 'it is not an object'
  const { cell_m: cell, north_west: corner, rows_m: rows } = value as Record<string, unknown>
  const { from, to } = GREEN_GRID_CELL_METRES
  if (typeof cell !== 'number' || !(cell >= from && cell <= to))
    return `cell_m is not a number from ${from} to ${to}`
  if (
    !isNumbers(corner) ||
    corner.length !== 2 ||
    Math.abs(corner[0] ?? 0) > 180 ||
    Math.abs(corner[1] ?? 0) > 90
  )
    return 'north_west is not [longitude, latitude] in degrees'
  if (!Array.isArray(rows) || rows.length < 2) return 'rows_m is not a list of two rows or more'
  const columns = isNumbers(rows[0]) ? rows[0].length : 0
  if (columns < 2 || !rows.every((row) => isNumbers(row) && row.length === columns))
    return 'the rows of rows_m are not lists of heights of one length'
  if (columns * rows.length > MOST_GRID_NODES) return `it has more than ${MOST_GRID_NODES} heights`
  return { cell, northWest: [corner[0] ?? 0, corner[1] ?? 0], rows }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

function isNumbers(value: unknown): value is number[] {
  return Array.isArray(value) && value.every((item) => typeof item === 'number' && Number.isFinite(item))
}
