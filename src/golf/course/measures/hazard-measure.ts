import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { pointAlong, polylineLength, projectOnPolyline } from '#numbers/geometry/polyline.ts'
import type { Area } from '../course.ts'
import type { HazardMeasure, SideMeasure } from '../hole-measures.ts'
import { BEYOND_PIN_METRES, CORRIDOR_HALF_WIDTH_METRES, EDGE_STEP_METRES } from '../settings.ts'
import { ahead, headingTo } from './ahead.ts'
import { stretchesInside } from './chords-across.ts'
import type { Interval } from './intervals.ts'

/** A place on the edge of a hazard, seen from the hole line. */
interface EdgePlace {
  readonly along: number
  readonly offset: number
  readonly straight: number
}

/** A hazard seen along a hole line (markers first, pin last, hole frame); `null` when no part of it is beside or across the hole. */
export function hazardMeasure(area: Area, line: readonly Point[]): HazardMeasure | null {
  const length = polylineLength(line)
  const played = extended(line, 0, BEYOND_PIN_METRES)
  const crossings = stretchesInside(area.polygon, played)
  const places = edgePlaces(area.polygon, line, length + BEYOND_PIN_METRES)
  const level = places.filter((place) => place.along <= length)
  const shared = {
    id: area.id,
    name: area.name,
    ground: area.ground,
    heightMetres: area.heightMetres,
    crossings: crossings.map(([fromMetres, toMetres]) => ({ fromMetres, toMetres })),
  }
  const start = crossings[0]?.[0]
  if (start !== undefined && (start < length || level.length === 0))
    return { ...shared, ...across(crossings, places, played) }
  const left = sideMeasure(
    places.filter((place) => place.offset < 0),
    length,
  )
  const right = sideMeasure(
    places.filter((place) => place.offset >= 0),
    length,
  )
  const isLeft =
    left !== null && (right === null || Math.abs(left.offsetMetres) < Math.abs(right.offsetMetres))
  const side = isLeft ? left : right
  if (side === null) return null
  const straight = places.filter((place) => place.offset < 0 === isLeft).map((place) => place.straight)
  return {
    ...shared,
    side: isLeft ? 'left' : 'right',
    ...side,
    carryMetres: side.farMetres,
    left,
    right,
    straight: { reachMetres: least(straight), carryMetres: -least(straight.map((metres) => -metres)) },
  }
}

type AcrossMeasure = Omit<HazardMeasure, 'id' | 'name' | 'ground' | 'heightMetres' | 'crossings'>

function across(
  crossings: readonly Interval[],
  places: readonly EdgePlace[],
  played: readonly Point[],
): AcrossMeasure {
  const first = crossings[0]?.[0] ?? 0
  const last = crossings.at(-1)?.[1] ?? 0
  const carry = last < polylineLength(played) - 1e-6 ? last : null
  const tee = played[0] ?? [0, 0]
  const straightTo = (along: number): number => distance(tee, pointAlong(played, along))
  const alongs = places.map((place) => place.along)
  return {
    side: 'across',
    reachMetres: Math.min(first, least(alongs)),
    farMetres: Math.max(last, -least(alongs.map((metres) => -metres))),
    carryMetres: carry,
    offsetMetres: 0,
    left: null,
    right: null,
    straight: {
      reachMetres: Math.min(straightTo(first), least(places.map((place) => place.straight))),
      carryMetres: carry === null ? null : straightTo(carry),
    },
  }
}

/** One side of a hazard; its offset is taken beside the hole where it lies there at all, not from what is behind the pin. */
function sideMeasure(places: readonly EdgePlace[], length: number): SideMeasure | null {
  if (places.length === 0) return null
  const level = places.filter((place) => place.along <= length)
  const offsets = (level.length > 0 ? level : places).map((place) => place.offset)
  const size = least(offsets.map(Math.abs))
  const alongs = places.map((place) => place.along)
  return {
    reachMetres: least(alongs),
    farMetres: -least(alongs.map((metres) => -metres)),
    offsetMetres: (offsets[0] ?? 0) < 0 ? -size : size,
  }
}

/** Places all round the edge within the corridor, close enough together that none between them is much nearer or further. */
function edgePlaces(polygon: Polygon, line: readonly Point[], until: number): EdgePlace[] {
  // Without the way back and on, everything behind the tee or the pin would seem to lie level with it.
  const behind = 2 * CORRIDOR_HALF_WIDTH_METRES
  const long = extended(line, behind, BEYOND_PIN_METRES + behind)
  const tee = line[0] ?? [0, 0]
  const seen = (place: Point): EdgePlace => {
    const { along, offset, distance: away } = projectOnPolyline(long, place)
    return { along: along - behind, offset: offset < 0 ? -away : away, straight: distance(tee, place) }
  }
  return polygon.flatMap((ring) => {
    const places = ring.flatMap((from, index) =>
      between(from, ring[(index + 1) % ring.length] ?? from).map(seen),
    )
    return places.flatMap((place, index) =>
      withinCorridor(place, places[(index + 1) % places.length] ?? place, until),
    )
  })
}

/** Points from one corner up to, but not at, the next. */
function between(from: Point, to: Point): Point[] {
  // A whole number of metres must not become one step more by rounding.
  const steps = Math.max(1, Math.ceil(distance(from, to) / EDGE_STEP_METRES - 1e-6))
  return Array.from({ length: steps }, (_, step): Point => {
    const share = step / steps
    return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]
  })
}

/** The two ends of what the corridor leaves of one short piece of edge; nothing when it lies outside. */
function withinCorridor(a: EdgePlace, b: EdgePlace, until: number): EdgePlace[] {
  let [from, to] = [0, 1]
  const width = CORRIDOR_HALF_WIDTH_METRES
  for (const [start, end] of [
    [a.along, b.along],
    [until - a.along, until - b.along],
    [width - a.offset, width - b.offset],
    [width + a.offset, width + b.offset],
  ] as const) {
    if (start < 0 && end < 0) return []
    if (start < 0) from = Math.max(from, start / (start - end))
    if (end < 0) to = Math.min(to, start / (start - end))
  }
  if (from > to) return []
  return from === 0 && to === 1 ? [a] : [mixed(a, b, from), mixed(a, b, to)]
}

function mixed(a: EdgePlace, b: EdgePlace, share: number): EdgePlace {
  const mix = (start: number, end: number): number => start + (end - start) * share
  return {
    along: mix(a.along, b.along),
    offset: mix(a.offset, b.offset),
    straight: mix(a.straight, b.straight),
  }
}

function least(values: readonly number[]): number {
  return values.reduce((smallest, value) => Math.min(smallest, value), Number.POSITIVE_INFINITY)
}

/** The line with its first leg drawn straight back and its last straight on. */
function extended(line: readonly Point[], back: number, on: number): Point[] {
  const [start, second, beforeEnd, end] = [line[0], line[1], line.at(-2), line.at(-1)]
  if (!start || !second || !beforeEnd || !end) return [...line]
  const first = ahead(start, headingTo(second, start), back)
  return [...(back > 0 ? [first] : []), ...line, ahead(end, headingTo(beforeEnd, end), on)]
}
