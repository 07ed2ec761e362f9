import type { Fault } from '#faults/fault.ts'
import { planarFrame } from '#numbers/geometry/frame.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { polygonCentroid } from '#numbers/geometry/polygon.ts'
import { polylineLength } from '#numbers/geometry/polyline.ts'
import { type TangentPlane, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import { WALK } from './gpx/settings.ts'
import { readWalkName, type WalkedKind } from './gpx/walk-names.ts'
import { type WalkedOutline, walkedOutline } from './gpx/walked-outline.ts'
import { parseWalks } from './gpx.ts'
import { type LineStart, lineStartText, toStart } from './line-start.ts'
import { type TableUnit, tableFigure } from './table-unit.ts'
import { BLANK_ROW, type TypedRow } from './typed-hole-table.ts'

/** A walk or a waypoint, for a person to say what it is. */
export interface WalkedItem {
  readonly id: string
  readonly name: string
  readonly isMark: boolean
  /** What its name says it is; empty where it does not. */
  readonly kind: WalkedKind | ''
  /** The hole that it names; `null` for none. */
  readonly ref: string | null
  /** Metres walked; 0 for a waypoint. */
  readonly metres: number
  /** Metres between its start and where it came back; `null` where it did. */
  readonly openMetres: number | null
}

/** A file of walks, and how it is laid on a hole. */
export interface WalkSheet {
  readonly items: readonly WalkedItem[]
  readonly faults: readonly Fault[]
  /** How far a walked place may be off, metres. */
  readonly accuracyMetres: number
  /**
   * Rows of a hole table by what each item is said to be, or why there can be none. `start`: where the hole begins already;
   * else the rows say so, unless it bends, since the walk knows no first leg.
   */
  lay(
    kinds: ReadonlyMap<string, string>,
    unit: TableUnit,
    hole?: { readonly start: LineStart | null; readonly isBent: boolean },
  ): { readonly rows: readonly TypedRow[]; readonly fault: Fault | null }
}

interface Placed extends WalkedItem {
  /** In a plane that touches the ground by the first of them, metres. */
  readonly points: readonly Point[]
  readonly outline: WalkedOutline
}

/** Reads a file of walks for the survey of one hole. Throws what {@link parseWalks} throws. */
export function readWalkSheet(text: string, where: string): WalkSheet {
  const { walks, marks, faults } = parseWalks(text, where)
  const recorded = [
    ...walks.map((walk) => ({ ...walk, isMark: false })),
    ...marks.map(({ position, ...mark }) => ({
      ...mark,
      positions: position === null ? [] : [position],
      isMark: true,
    })),
  ].filter(({ positions }) => positions.length > 0)
  const plane = tangentPlane(recorded[0]?.positions[0] ?? [0, 0])
  const items = recorded.map(({ id, name, isMark, positions }): Placed => {
    const points = positions.map(plane.toPlane)
    const outline = walkedOutline(points)
    const said = readWalkName(name)
    const fits = isMark === MARKS.includes(said.kind ?? 'hole') && said.kind !== 'hole'
    return {
      id,
      name,
      isMark,
      kind: fits ? (said.kind ?? '') : '',
      ref: said.ref,
      metres: polylineLength(points),
      openMetres: isMark || outline.isClosed ? null : outline.gapMetres,
      points,
      outline,
    }
  })
  return {
    items,
    faults,
    accuracyMetres: WALK.accuracy,
    lay: (kinds, unit, hole = { start: null, isBent: false }) => lay(items, plane, kinds, unit, hole, where),
  }
}

const MARKS: readonly string[] = ['tee', 'pin', 'tree']

function lay(
  items: readonly Placed[],
  plane: TangentPlane,
  kinds: ReadonlyMap<string, string>,
  unit: TableUnit,
  hole: { readonly start: LineStart | null; readonly isBent: boolean },
  where: string,
): ReturnType<WalkSheet['lay']> {
  const taken = items
    .map((item) => ({ ...item, what: kinds.get(item.id) ?? '' }))
    .filter(({ what }) => what !== '')
  const first = (what: string): Placed | undefined => taken.find((item) => item.what === what)
  const tee = first('tee')?.points[0]
  const green = first('green')?.outline.corners ?? []
  const end = first('pin')?.points[0] ?? (green.length > 0 ? polygonCentroid([green]) : undefined)
  if (tee === undefined || end === undefined || distance(tee, end) < 1)
    return {
      rows: [],
      fault: {
        severity: 'error',
        code: 'MAR-IMPORT-038',
        message: `Nothing says where ${tee === undefined ? 'the tee is' : 'the hole ends'}, so the walks cannot be laid on it.`,
        place: where,
        advice: 'Say which waypoint is the tee and which the pin, or which walk goes round the green.',
      },
    }
  const bare = taken.find(({ isMark, outline }) => !isMark && outline.corners.length < 3)
  if (bare !== undefined)
    return {
      rows: [],
      fault: {
        severity: 'error',
        code: 'MAR-IMPORT-012',
        message: `The walk “${bare.name}” encloses no ground.`,
        place: where,
        advice: 'Leave it out, or walk round that ground again.',
      },
    }
  const bearing = Math.atan2(end[0] - tee[0], end[1] - tee[1])
  const known = hole.start === null ? null : toStart(hole.start)
  const own = planarFrame(tee, bearing)
  const toFrame = (at: Point): Point => (known === null ? own.toFrame(at) : known(plane.toLonLat(at)))
  const [longitude, latitude] = plane.toLonLat(tee)
  const start = { latitude, longitude, headingDegrees: wholeTurn(radiansToDegrees(bearing)) }
  const rows = taken.flatMap(({ what, name, points, outline }): TypedRow[] => {
    const { rest } = readWalkName(name)
    const [at] = points
    if (what === 'pin' || at === undefined) return []
    if (what === 'tee') return [{ ...BLANK_ROW, what, ...placeCells(toFrame(at), unit), note: rest }]
    if (what === 'tree') return [{ ...BLANK_ROW, what: 'trees', outline: crown(toFrame(at)), note: 'a tree' }]
    return [{ ...BLANK_ROW, what, outline: outline.corners.map(toFrame), note: rest }]
  })
  const begins =
    known !== null || hole.isBent ? [] : [{ ...BLANK_ROW, what: 'start', note: lineStartText(start) }]
  return { rows: [...rows, ...begins], fault: null }
}

/** Where tee markers stand, as the cells of their row. */
function placeCells([beside, along]: Point, unit: TableUnit): Partial<TypedRow> {
  const off = tableFigure(Math.abs(beside), unit)
  const from = tableFigure(along, unit)
  return Number(off) > 0 ? { from, side: beside < 0 ? 'left' : 'right', near: off } : { from }
}

/** The crown of a single tree of 10 m, the height that is taken where none is known (docs/course-file.md), as eight corners. */
function crown([x, y]: Point): Point[] {
  return Array.from({ length: 8 }, (_, k): Point => {
    const angle = (k * Math.PI) / 4
    return [x + CROWN_METRES * Math.cos(angle), y + CROWN_METRES * Math.sin(angle)]
  })
}

const CROWN_METRES = 3
