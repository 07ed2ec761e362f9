import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { Area, Course } from '#golf/course/course.ts'
import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { HoleMeasures } from '#golf/course/hole-measures.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { distance } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { pointAlong, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import { parseGeojson } from '#outside/formats/geojson.ts'

/** One row of a hole table, metres; blank where a person would leave it blank. */
interface Row {
  readonly what: string
  readonly side: 'left' | 'right' | 'across' | ''
  readonly from: number | ''
  readonly to: number | ''
  readonly near: number | ''
  readonly far: number | ''
  readonly note: string
}

/** Where the pieces of one area lie: metres along the hole line and off it, right positive. */
interface Spot {
  readonly along: number
  readonly off: number
}

const WHAT: Readonly<Partial<Record<Ground, string>>> = {
  'penalty-red': 'water-red',
  'penalty-yellow': 'water-yellow',
  bunker: 'bunker',
  trees: 'trees',
  scrub: 'scrub',
  heavy: 'heavy',
  out: 'out',
}

/** Nobody writes down what lies further off the line than this, metres. */
const REACH_OFF: Readonly<Partial<Record<Ground, number>>> = {
  bunker: 32,
  'penalty-red': 60,
  'penalty-yellow': 60,
  out: 75,
}
const USUAL_REACH_OFF = 48

/** No edge is paced out further off the line than this, metres. */
const FURTHEST_OFF = 80

/** Long ground is written down in pieces of about this length, metres. */
const PIECE = 70

/** Behind the tee and past the green the line is carried straight on by so much, metres. */
const BEYOND = 60

const METRES_PER_YARD = 0.9144

/**
 * The typed table of a whole course file, in metres from the middle tees: what a professional would have written
 * down walking it, measured from the drawing. One row an object; long edges and fairways in a few pieces.
 */
export function buildTable(courseText: string): string {
  const course = readCourse(courseText)
  const rows = course.holes.flatMap(({ ref }) =>
    rowsOf(holeFromCourse(course, ref), PIECE).map((row) => ({ ref, row })),
  )
  return tableText('m', rows, 1)
}

/** One hole as it is typed in a hurry, in yards: fairway, sand, the water in play, green. */
export function buildShortTable(courseText: string, ref: string): string {
  const course = readCourse(courseText)
  const rows = rowsOf(holeFromCourse(course, ref), 1.5 * PIECE)
    .filter(
      ({ what, near }) => ['fairway', 'bunker', 'green', 'water-red'].includes(what) && Number(near) < 45,
    )
    .map((row) => ({ ref, row: { ...row, note: row.what === 'green' ? row.note : '' } }))
  return tableText('yd', rows, METRES_PER_YARD)
}

function readCourse(text: string): Course {
  const source = parseGeojson(text, 'course')
  return assembleCourse(source.features, source).course
}

function tableText(
  unit: string,
  rows: readonly { readonly ref: string; readonly row: Row }[],
  metresPerUnit: number,
): string {
  const number = (value: number | ''): number | '' => (value === '' ? '' : round(value / metresPerUnit))
  const lines = rows.map(({ ref, row: { what, side, from, to, near, far, note } }) =>
    [ref, what, side, number(from), number(to), number(near), number(far), note].join(','),
  )
  const header = [
    'hole',
    'what',
    'side',
    ...['from', 'to', 'near', 'far'].map((name) => `${name}_${unit}`),
    'note',
  ]
  return [header.join(','), ...lines, ''].join('\n')
}

function rowsOf(hole: Hole, piece: number): Row[] {
  const { fairway, green, legs } = measureHole(hole)
  if (!green) throw new Error(`Hole ${hole.ref} has no green`)
  const bends = legs.flatMap((leg): Row[] => {
    if (leg.bendDegrees === null) return []
    const side = leg.bendDegrees < 0 ? 'left' : 'right'
    const note = `${Math.abs(Math.round(leg.bendDegrees))} deg`
    return [{ what: 'bend', side, from: Math.round(leg.endsAtMetres), to: '', near: '', far: '', note }]
  })
  const note = `"par ${hole.par}, index ${hole.strokeIndex ?? ''}"`
  const greenRow: Row = {
    what: 'green',
    side: '',
    from: Math.round(green.frontMetres),
    to: Math.round(green.backMetres),
    near: 0,
    far: Math.round(green.widthMetres),
    note,
  }
  const tee: Row = { what: 'tee', side: '', from: 0, to: '', near: '', far: '', note: hole.teeName }
  const hazards = hole.areas
    .flatMap((area) => hazardRows(hole, area))
    .map((row) => endedAtBends(row, bends))
    .sort((a, b) => Number(a.from) - Number(b.from))
  return [tee, ...bends, ...fairwayRows(hole, fairway, piece), ...hazards, greenRow]
}

/** Paced pieces end at a bend rather than just before or past it, where strips off the line would fold over. */
function endedAtBends(row: Row, bends: readonly Row[]): Row {
  if (Number(row.to) - Number(row.from) < PIECE / 2) return row
  const snapped = (along: number | ''): number | '' =>
    bends.find((bend) => Math.abs(Number(bend.from) - Number(along)) < 12)?.from ?? along
  return { ...row, from: snapped(row.from), to: snapped(row.to) }
}

function fairwayRows(hole: Hole, widths: HoleMeasures['fairway'], piece: number): Row[] {
  return hole.areas
    .filter((area) => area.ground === 'fairway' && area.holes?.includes(hole.ref))
    .flatMap((area) => {
      const spots = spotsOf(hole, area)
      return piecesOf(spots, piece).map(([from, to]): Row => {
        const inside = widths.filter(({ atMetres }) => atMetres > from + 8 && atMetres < to - 8)
        const edge = (side: 'leftMetres' | 'rightMetres', sign: 1 | -1): number => {
          if (inside.length > 0) return Math.abs(mean(inside.map((width) => width[side])))
          return mean(
            spots
              .filter(({ along, off }) => along >= from && along <= to && off * sign > 0)
              .map(({ off }) => Math.abs(off)),
          )
        }
        const left = Math.round(edge('leftMetres', -1))
        const right = Math.round(edge('rightMetres', 1))
        return {
          what: 'fairway',
          side: 'across',
          from: round(from),
          to: round(to),
          near: -left,
          far: right,
          note: '',
        }
      })
    })
}

function hazardRows(hole: Hole, area: Area): Row[] {
  const what = WHAT[area.ground]
  if (what === undefined) return []
  const reach = REACH_OFF[area.ground] ?? USUAL_REACH_OFF
  const spots = spotsOf(hole, area).filter(({ along }) => along > 0.5 && along < hole.lengthMetres + 30)
  const crossing = crossingOf(hole, area)
  const isDitch = /^(burn|wall-ditch)/.test(area.id)
  if (crossing && isDitch) return [ditchAcross(area, spots)]
  if (!crossing) {
    const kind = isDitch ? (area.ground === 'penalty-yellow' ? 'ditch-yellow' : 'ditch-red') : what
    return (['left', 'right'] as const).flatMap((side) => {
      const own = spots.filter(({ off }) => (side === 'left' ? off < 0 : off > 0))
      return sideRows(area, kind, side, own, reach)
    })
  }
  const [from, to] = crossing
  const offs = spots.filter(({ along }) => along >= from && along <= to).map(({ off }) => off)
  const near = round(Math.max(-FURTHEST_OFF, Math.min(...offs)))
  const far = round(Math.min(FURTHEST_OFF, Math.max(...offs)))
  return [{ what, side: 'across', from: round(from), to: round(to), near, far, note: noteOf(area) }]
}

/** Where the hole line runs through an area, metres along; `null` when it does not. */
function crossingOf(hole: Hole, area: Area): readonly [from: number, to: number] | null {
  const inside: number[] = []
  for (let along = 0; along <= hole.lengthMetres; along++) {
    if (polygonContains(area.polygon, pointAlong(hole.line, along))) inside.push(along)
  }
  const first = inside[0]
  return first === undefined ? null : [first, inside.at(-1) ?? first]
}

function ditchAcross(area: Area, spots: readonly Spot[]): Row {
  const nearLine = spots.filter(({ off }) => Math.abs(off) < 15).map(({ along }) => along)
  const what = area.ground === 'penalty-yellow' ? 'ditch-yellow' : 'ditch-red'
  const from = round(mean(nearLine) - 2.5)
  return { what, side: 'across', from, to: from + 5, near: '', far: '', note: noteOf(area) }
}

function sideRows(
  area: Area,
  what: string,
  side: 'left' | 'right',
  spots: readonly Spot[],
  reach: number,
): Row[] {
  const inReach = spots.filter(({ off }) => Math.abs(off) < reach)
  if (inReach.length === 0) return []
  return piecesOf(inReach, PIECE).flatMap(([from, to]): Row[] => {
    const within = spots.filter(({ along }) => along >= from && along <= to)
    const away = within.map(({ off }) => Math.abs(off))
    const near = round(Math.min(...away))
    if (near > reach || to - from < 4) return []
    const outer = what.startsWith('ditch')
      ? near + 6
      : area.id === 'sea'
        ? FURTHEST_OFF
        : Math.min(FURTHEST_OFF, Math.max(...away))
    const far = what === 'out' ? '' : Math.max(near + 5, round(outer))
    return [{ what, side, from: round(from), to: round(to), near, far, note: noteOf(area) }]
  })
}

/** The outline of an area every metre or so, seen from the hole line. */
function spotsOf(hole: Hole, area: Area): Spot[] {
  const line = [
    carriedOn(hole.line[1], hole.line[0]),
    ...hole.line,
    carriedOn(hole.line.at(-2), hole.line.at(-1)),
  ]
  return (area.polygon[0] ?? []).flatMap((from, i, ring) => {
    const to = ring[(i + 1) % ring.length] ?? from
    const steps = Math.max(1, Math.ceil(distance(from, to)))
    return Array.from({ length: steps }, (_, k): Spot => {
      const t = k / steps
      const point: Point = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]
      const { along, offset } = projectOnPolyline(line, point)
      return { along: along - BEYOND, off: offset }
    })
  })
}

function carriedOn(before: Point | undefined, end: Point | undefined): Point {
  if (!before || !end) throw new Error('A hole line has two points or more')
  const share = 1 + BEYOND / distance(before, end)
  return [before[0] + share * (end[0] - before[0]), before[1] + share * (end[1] - before[1])]
}

/** The stretch along the line in equal pieces of at most about so many metres. */
function piecesOf(spots: readonly Spot[], most: number): (readonly [from: number, to: number])[] {
  const alongs = spots.map(({ along }) => along)
  const from = Math.min(...alongs)
  const length = Math.max(...alongs) - from
  const count = Math.max(1, Math.round(length / most))
  return Array.from({ length: count }, (_, i) => [
    from + (i * length) / count,
    from + ((i + 1) * length) / count,
  ])
}

function noteOf(area: Area): string {
  return area.name ?? ''
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)
}

function round(value: number): number {
  // Plus nought, so that a small negative number is not written as −0.
  return Math.round(value) + 0
}
