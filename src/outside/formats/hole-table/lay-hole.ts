import type { Fault } from '#faults/fault.ts'
import type { SurveyFeature } from '#golf/course/survey-feature.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { readLineStart } from '../line-start.ts'
import { TABLE_DEFAULTS } from '../settings.ts'
import { bendDegrees } from './bend-degrees.ts'
import { type BentLine, bentLine } from './bent-line.ts'
import { layGreen } from './lay-green.ts'
import { readNote } from './read-note.ts'
import { type RowExtent, rowExtent } from './row-extent.ts'
import { assumedFault, noGreen, severalGreens } from './table-faults.ts'
import type { TableRow } from './table-row.ts'

/** From the hole's own plane, tee at the origin and y up the first leg, to the earth. */
export type ToLonLat = (point: Point) => readonly [longitude: number, latitude: number]

/** A hole of a table as features, and what was wrong or taken for granted. */
export interface LaidHole {
  readonly features: readonly SurveyFeature[]
  readonly faults: readonly Fault[]
}

const TAGS: Readonly<
  Record<Exclude<TableRow['what'], 'bend' | 'start' | 'tee'>, Readonly<Record<string, string>>>
> = {
  fairway: { golf: 'fairway' },
  green: { golf: 'green' },
  bunker: { golf: 'bunker' },
  heavy: { golf: 'rough', 'marram:grass': 'heavy' },
  out: { golf: 'out_of_bounds' },
  trees: { natural: 'wood' },
  scrub: { natural: 'scrub' },
  'water-red': { golf: 'lateral_water_hazard', 'marram:penalty': 'red' },
  'water-yellow': { golf: 'water_hazard', 'marram:penalty': 'yellow' },
  'ditch-red': { golf: 'lateral_water_hazard', 'marram:penalty': 'red' },
  'ditch-yellow': { golf: 'water_hazard', 'marram:penalty': 'yellow' },
}

/**
 * Builds one hole from its rows: its line from the chosen tee to the middle of the green, and everything along it. Its first
 * leg points so many degrees from north; `null`: nobody has said, and it is laid to the north.
 */
export function layHole(
  ref: string,
  rows: readonly TableRow[],
  toLonLat: ToLonLat,
  northDegrees: number | null,
): LaidHole {
  const faults: Fault[] = []
  const features: SurveyFeature[] = []
  const line = bentLine(rows.filter((row) => row.what === 'bend').flatMap((row) => bendOf(row)))
  const greens = rows.filter((row) => row.what === 'green')
  const end = greens.map((row) => endAt(row, line)).find((place) => place !== null)
  if (end && greens.length > 1) faults.push(severalGreens(ref, greens))
  const length = end?.length ?? 0
  const placed = { ref, line, toLonLat, isBearingInvented: northDegrees === null }
  if (end) features.push(holeFeature(placed, end, rows))
  else faults.push(noGreen(ref))
  const addArea = (row: TableRow, ring: readonly Point[]): void => {
    const slope = layGreen(row, ring, approachFrom(ring, line), toLonLat, northDegrees ?? 0)
    features.push(areaFeature(row, ring, slope.tags, placed), ...slope.features)
    faults.push(...slope.faults)
  }
  for (const row of rows) {
    if (row.what === 'bend') features.push(...bendFeature(row, placed))
    else if (row.what === 'start') features.push(...startFeature(row, rows))
    else if (row.what === 'tee') features.push(...teeFeatures(row, placed))
    else if (row.outline !== null) addArea(row, row.outline)
    else {
      const extent = rowExtent(row, length)
      if (isExtent(extent)) {
        addArea(row, row.what === 'green' ? oval(extent, line) : outline(extent, line))
        if (extent.assumed.length > 0) faults.push(assumedFault(row, extent.assumed))
      } else {
        features.push({
          id: `line ${row.line}`,
          tags: rowTags(row, ref),
          geometry: { kind: 'none', ...extent },
        })
      }
    }
  }
  if (!rows.some((row) => row.what === 'tee')) features.push(teePoint(`hole ${ref} tee`, '', 0, 0, placed))
  return { features, faults }
}

interface Placed {
  readonly ref: string
  readonly line: BentLine
  readonly toLonLat: ToLonLat
  readonly isBearingInvented: boolean
}

/** Where a hole ends: the middle of its green, so far along its line. */
interface HoleEnd {
  readonly at: Point
  readonly length: number
}

function endAt(row: TableRow, line: BentLine): HoleEnd | null {
  if (row.outline !== null) {
    const { minX, maxX, minY, maxY } = polygonBounds([row.outline])
    const at: Point = [(minX + maxX) / 2, (minY + maxY) / 2]
    const last = lastTurn(at, line)
    return { at, length: last + distance(line.place(last, 0), at) }
  }
  const extent = rowExtent(row, 0)
  if (!isExtent(extent)) return null
  const length = (extent.from + extent.to) / 2
  return { at: line.place(length, (extent.left + extent.right) / 2), length }
}

/** How far along a line its last turn before a place lies; 0 for none. */
function lastTurn(at: Point, line: BentLine): number {
  let last = 0
  // A bend further away than the green lies behind it.
  for (const turn of line.turns) if (turn > 0 && turn - last < distance(line.place(last, 0), at)) last = turn
  return last
}

/** Where the line of approach to a green begins. */
function approachFrom(green: readonly Point[], line: BentLine): Point {
  const { minX, maxX, minY, maxY } = polygonBounds([green])
  return line.place(lastTurn([(minX + maxX) / 2, (minY + maxY) / 2], line), 0)
}

function isExtent(value: RowExtent | { readonly reason: string }): value is RowExtent {
  return !('reason' in value)
}

// Without a readable angle the row becomes a question, see bendFeature.
function bendOf(row: TableRow): { at: number; turn: number }[] {
  const degrees = bendDegrees(row.note)
  if (row.from === null || degrees === null || row.side === 'across') return []
  const turn = degreesToRadians(degrees)
  return turn > 0 && turn < Math.PI / 2 ? [{ at: row.from, turn: row.side === 'left' ? -turn : turn }] : []
}

function bendFeature(row: TableRow, placed: Placed): SurveyFeature[] {
  if (bendOf(row).length > 0) return []
  const reason =
    'a bend needs a side, “from” and its angle under 90 degrees in the note: bend,left,240,,,,35 deg'
  const tags = { golf: 'hole', ref: placed.ref, name: 'bend' }
  return [{ id: `line ${row.line}`, tags, geometry: { kind: 'none', reason, code: 'MAR-IMPORT-019' } }]
}

function startFeature(row: TableRow, rows: readonly TableRow[]): SurveyFeature[] {
  const isFirst = rows.find(({ what }) => what === 'start') === row
  const hasCells =
    row.side !== 'across' || [row.from, row.to, row.near, row.far].some((cell) => cell !== null)
  if (isFirst && !hasCells && readLineStart(row.note) !== null) return []
  const reason = !isFirst
    ? `hole ${row.hole} has a start row already`
    : hasCells
      ? 'a start has nothing but a note: the line begins there, at 0'
      : 'a start needs latitude, longitude and heading in degrees as its note, such as 55.9412 -1.8031 toward 43'
  const tags = { golf: 'hole', ref: row.hole, name: 'start' }
  return [{ id: `line ${row.line}`, tags, geometry: { kind: 'none', reason, code: 'MAR-IMPORT-019' } }]
}

function holeFeature(placed: Placed, { at: end, length }: HoleEnd, rows: readonly TableRow[]): SurveyFeature {
  const { line, ref, toLonLat, isBearingInvented } = placed
  const notes = rows.map((row) => readNote(row.note))
  const first = (key: 'par' | 'index'): string | undefined =>
    notes.find((note) => note[key] !== null)?.[key] ?? undefined
  const par = first('par')
  const index = first('index')
  const positions = [
    line.place(0, 0),
    ...line.turns.filter((at) => at > 0 && at < length).map((at) => line.place(at, 0)),
    end,
  ].map(toLonLat)
  const tags = {
    golf: 'hole',
    ref,
    ...(par === undefined ? { 'marram:guess_par': 'yes' } : { par }),
    ...(index === undefined ? {} : { handicap: index }),
    ...(isBearingInvented ? { 'marram:bearing': 'invented' } : {}),
    ...Object.fromEntries(rows.flatMap(cardLength)),
  }
  return { id: `hole ${ref}`, tags, geometry: { kind: 'line', positions } }
}

/** The card's length from the markers of a tee row; in any other row it is that of the hole. */
function cardLength(row: TableRow): (readonly [string, string])[] {
  if (row.cardMetres === null) return []
  const name = row.what === 'tee' ? readNote(row.note).rest : ''
  return [[name === '' ? 'dist' : `dist:${name}`, String(row.cardMetres)]]
}

function teeFeatures(row: TableRow, placed: Placed): SurveyFeature[] {
  const along = row.from ?? 0
  const aside = row.side === 'across' ? 0 : ((row.near ?? 0) + (row.far ?? row.near ?? 0)) / 2
  const offset = row.side === 'left' ? -aside : aside
  const half = TABLE_DEFAULTS.teeSide / 2
  const extent = { from: along - half, to: along + half, left: offset - half, right: offset + half }
  const tags = { golf: 'tee', 'marram:hole': placed.ref, 'marram:markers': 'apart' }
  return [
    teePoint(`line ${row.line}`, readNote(row.note).rest, along, offset, placed),
    {
      id: `line ${row.line} ground`,
      tags,
      geometry: { kind: 'area', rings: [closed(outline(extent, placed.line).map(placed.toLonLat))] },
    },
  ]
}

function teePoint(id: string, name: string, along: number, offset: number, placed: Placed): SurveyFeature {
  const tags = { golf: 'tee', 'marram:hole': placed.ref, ...(name === '' ? {} : { tee: name }) }
  return {
    id,
    tags,
    geometry: { kind: 'point', position: placed.toLonLat(placed.line.place(along, offset)) },
  }
}

function rowTags(row: TableRow, ref: string): Record<string, string> {
  const name = readNote(row.note).rest
  const kind = row.what === 'bend' || row.what === 'start' || row.what === 'tee' ? {} : TAGS[row.what]
  return { ...kind, 'marram:hole': ref, ...(name === '' ? {} : { name }) }
}

function areaFeature(
  row: TableRow,
  corners: readonly Point[],
  slope: Readonly<Record<string, string>>,
  { ref, toLonLat }: Placed,
): SurveyFeature {
  return {
    id: `line ${row.line}`,
    tags: { ...rowTags(row, ref), ...slope },
    geometry: { kind: 'area', rings: [closed(corners.map(toLonLat))] },
  }
}

/** A ring as RFC 7946 has it: its first position once more at its end. */
function closed<Position>(ring: readonly Position[]): Position[] {
  return [...ring, ...ring.slice(0, 1)]
}

type Edges = Pick<RowExtent, 'from' | 'to' | 'left' | 'right'>

function outline(extent: Edges, line: BentLine): Point[] {
  const stops = [extent.from, ...line.turns.filter((at) => at > extent.from && at < extent.to), extent.to]
  const right = stops.map((at) => line.place(at, extent.right))
  const left = stops.map((at) => line.place(at, extent.left)).reverse()
  return [...right, ...left]
}

const OVAL_CORNERS = 32

// A green is round enough that the corners of its box would be a tenth of its measure too far from the pin.
function oval(extent: Edges, line: BentLine): Point[] {
  const middle = (extent.from + extent.to) / 2
  const centre = (extent.left + extent.right) / 2
  return Array.from({ length: OVAL_CORNERS }, (_, index) => {
    const angle = (index / OVAL_CORNERS) * 2 * Math.PI
    return line.place(
      middle + ((extent.to - extent.from) / 2) * Math.sin(angle),
      centre + ((extent.right - extent.left) / 2) * Math.cos(angle),
    )
  })
}
