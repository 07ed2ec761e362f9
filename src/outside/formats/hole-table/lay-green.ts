import type { Fault } from '#faults/fault.ts'
import { GREEN_GRID_CELL_METRES } from '#golf/course/settings.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'
import { planarFrame } from '#numbers/geometry/frame.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { degreesToRadians, radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import type { ToLonLat } from './lay-hole.ts'
import { type ReadGreen, readGreen } from './read-green.ts'
import type { TableRow } from './table-row.ts'

/** What the slope of a green adds to it. */
export interface LaidGreen {
  readonly tags: Readonly<Record<string, string>>
  /** Its spot heights. */
  readonly features: readonly SurveyFeature[]
  readonly faults: readonly Fault[]
}

/** A green as the player comes to it: places by how far they are on from its front edge and beside its middle line, metres. */
interface Approach {
  readonly bearingDegrees: number
  readonly depth: number
  place(on: number, beside: number): Point
  /** On and beside of a place. */
  placed(point: Point): Point
}

/**
 * Lays what was typed of a green's slope on its outline: heights as spot heights, steps as a grid of heights, a fall alone as
 * a fall. `from` is where its line of approach begins; all in the plane of the table, whose y axis points so many degrees
 * from north: bearings and grids of a course go by north.
 */
export function layGreen(
  row: TableRow,
  outline: readonly Point[],
  from: Point,
  toLonLat: ToLonLat,
  northDegrees: number,
): LaidGreen {
  if (row.green === null) return { tags: {}, features: [], faults: [] }
  const read = readGreen(row.green, row.metresPerUnit)
  const approach = approachTo(outline, from)
  const off = read.tiers.filter(({ on }) => on < 0 || on > approach.depth)
  const tiers = read.tiers.filter((tier) => !off.includes(tier))
  const grid =
    tiers.length === 0 ? null : tierGrid({ ...read, tiers }, outline, approach, toLonLat, northDegrees)
  return {
    tags:
      tiers.length === 0
        ? fallTags(read, approach.bearingDegrees + northDegrees)
        : grid === null
          ? {}
          : { 'marram:height_grid': grid },
    features: read.heights.map(({ on, beside, height }, index) => ({
      id: `line ${row.line} height ${index + 1}`,
      tags: { 'marram:survey': 'spot-height', 'marram:elevation_m': String(height) },
      geometry: { kind: 'point', position: toLonLat(approach.place(on, beside)) },
    })),
    faults: [
      ...read.wrong,
      ...off.map(() => 'a tier lies before the front or behind the back of the green'),
      ...(grid === null && tiers.length > 0 ? ['the green is too large for tiers'] : []),
    ].map((reason) => greenFault(row, reason)),
  }
}

function greenFault(row: TableRow, reason: string): Fault {
  return {
    severity: 'error',
    code: 'MAR-IMPORT-039',
    message: `line ${row.line}: ${reason}.`,
    place: `line ${row.line}`,
    advice: 'It was left out; correct it, or take it away.',
  }
}

function approachTo(outline: readonly Point[], from: Point): Approach {
  const { minX, maxX, minY, maxY } = polygonBounds([outline])
  const middle: Point = [(minX + maxX) / 2, (minY + maxY) / 2]
  const heading = Math.atan2(middle[0] - from[0], middle[1] - from[1])
  const [sin, cos] = [Math.sin(heading), Math.cos(heading)]
  const along = ([x, y]: Point): number => (x - middle[0]) * sin + (y - middle[1]) * cos
  const alongs = outline.map(along)
  const front = Math.min(...alongs)
  return {
    bearingDegrees: radiansToDegrees(heading),
    depth: Math.max(...alongs) - front,
    place: (on, beside) => [
      middle[0] + (front + on) * sin + beside * cos,
      middle[1] + (front + on) * cos - beside * sin,
    ],
    placed: (point) => [along(point) - front, (point[0] - middle[0]) * cos - (point[1] - middle[1]) * sin],
  }
}

function fallTags({ fall }: ReadGreen, bearingDegrees: number): Record<string, string> {
  if (fall === null) return {}
  return {
    'marram:fall_percent': String(fall.percent),
    'marram:fall_toward_deg': String(wholeTurn(bearingDegrees + fall.towardDegrees)),
  }
}

/** Heights every metre or more over the green and a margin, columns to the east and rows to the south; `null` for a green larger than such a grid. */
function tierGrid(
  green: ReadGreen,
  outline: readonly Point[],
  approach: Approach,
  toLonLat: ToLonLat,
  northDegrees: number,
): string | null {
  const { fromFrame: toNorth, toFrame: toTable } = planarFrame([0, 0], degreesToRadians(northDegrees))
  const { minX, maxX, minY, maxY } = polygonBounds([outline.map(toNorth)])
  const [width, height] = [maxX - minX + 2 * MARGIN_METRES, maxY - minY + 2 * MARGIN_METRES]
  const cell = Math.max(1, Math.sqrt((width * height) / MOST_NODES))
  if (cell > GREEN_GRID_CELL_METRES.to) return null
  const [west, north] = [minX - MARGIN_METRES, maxY + MARGIN_METRES]
  const [columns, rows] = [Math.ceil(width / cell) + 1, Math.ceil(height / cell) + 1]
  const heights = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const at = approach.placed(toTable([west + column * cell, north - row * cell]))
      return Number(tieredHeight(green, at).toFixed(5))
    }),
  )
  return JSON.stringify({ cell_m: cell, north_west: toLonLat(toTable([west, north])), rows_m: heights })
}

/** The fall as a plane, and over it each step, as steep at its foot and head as the ground before and behind it. */
function tieredHeight({ fall, tiers }: ReadGreen, [on, beside]: Point): number {
  const toward = degreesToRadians(fall?.towardDegrees ?? 0)
  const downhill = on * Math.cos(toward) + beside * Math.sin(toward)
  return tiers.reduce(
    (sum, tier) => {
      const share = Math.max(0, Math.min(1, (on - tier.on) / Math.max(tier.over, SHORTEST_STEP) + 0.5))
      return sum + tier.rise * share * share * (3 - 2 * share)
    },
    (-(fall?.percent ?? 0) / 100) * downhill,
  )
}

/** Our assumptions: ground round a green that a ball runs over, the nodes of a grid, and a step no mower could go over. */
const MARGIN_METRES = 3
const MOST_NODES = 4000
const SHORTEST_STEP = 0.5
