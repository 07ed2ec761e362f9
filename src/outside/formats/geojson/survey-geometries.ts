import type { FaultCode } from '#faults/codes.ts'
import type { LonLat, SurveyGeometry } from '#golf/course/survey-feature.ts'
import { isJsonObject } from '../json-text.ts'

/**
 * A GeoJSON geometry of unknown content as survey geometries: one, except for collections and several lines or
 * points. A part that cannot be used is `none` with the reason. A height in a position is left out. Never throws.
 */
export function surveyGeometries(geometry: unknown): readonly SurveyGeometry[] {
  const parts = partsOf(geometry, 0)
  return (parts.length > 0 ? parts : refuse('its geometry is empty')).map((part): SurveyGeometry => {
    try {
      return part()
    } catch (cause) {
      if (cause instanceof Unusable) return { kind: 'none', reason: cause.message, code: cause.code }
      throw cause
    }
  })
}

class Unusable extends Error {
  readonly code: FaultCode

  constructor(reason: string, code: FaultCode = 'MAR-IMPORT-012') {
    super(reason)
    this.code = code
  }
}

// A collection of collections is legal but nobody draws a course so; the limit keeps a hostile file from filling the stack.
const DEEPEST_COLLECTION = 8

function partsOf(geometry: unknown, depth: number): (() => SurveyGeometry)[] {
  if (geometry === null || geometry === undefined) return refuse('it has no geometry')
  if (!isJsonObject(geometry)) return refuse('its geometry is not an object')
  const coordinates = geometry.coordinates
  const list: readonly unknown[] = Array.isArray(coordinates) ? coordinates : []
  switch (geometry.type) {
    case 'Point':
      return [() => ({ kind: 'point', position: readPosition(coordinates) })]
    case 'MultiPoint':
      return list.map((point) => () => ({ kind: 'point', position: readPosition(point) }))
    case 'LineString':
      return [() => ({ kind: 'line', positions: readLine(coordinates) })]
    case 'MultiLineString':
      return joined(list).map((line) => () => ({ kind: 'line', positions: readLine(line) }))
    case 'Polygon':
      return [() => ({ kind: 'area', rings: readRings(coordinates) })]
    case 'MultiPolygon': {
      if (list.length === 0) return refuse('it has no polygons')
      if (list.length === 1) return [() => ({ kind: 'area', rings: readRings(list[0]) })]
      return [() => ({ kind: 'areas', polygons: list.map(readRings) })]
    }
    case 'GeometryCollection': {
      const members = geometry.geometries
      if (!Array.isArray(members) || members.length === 0)
        return refuse('its collection of geometries is empty')
      if (depth >= DEEPEST_COLLECTION) return refuse('its collections are nested too deeply')
      return members.flatMap((member) => partsOf(member, depth + 1))
    }
    default:
      return refuse(`“${String(geometry.type)}” is not a kind of geometry`)
  }
}

/** Lines of one feature with each that starts where the one before ends joined to it: a hole drawn leg by leg is one line. */
function joined(lines: readonly unknown[]): unknown[] {
  const whole: unknown[] = []
  for (const line of lines) {
    const before = whole.at(-1)
    const isNext = Array.isArray(before) && Array.isArray(line) && String(before.at(-1)) === String(line[0])
    if (isNext) whole[whole.length - 1] = [...before, ...line.slice(1)]
    else whole.push(line)
  }
  return whole
}

function refuse(reason: string): (() => SurveyGeometry)[] {
  return [
    () => {
      throw new Unusable(reason)
    },
  ]
}

function readPosition(value: unknown): LonLat {
  if (!Array.isArray(value) || value.length < 2) throw new Unusable('a position is not a pair of numbers')
  const [longitude, latitude] = value
  if (typeof longitude !== 'number' || typeof latitude !== 'number') {
    throw new Unusable('a position is not a pair of numbers')
  }
  if (Math.abs(longitude) > 180 || Math.abs(latitude) > 90) {
    throw new Unusable(
      `[${longitude}, ${latitude}] is not a longitude and latitude in degrees`,
      'MAR-IMPORT-013',
    )
  }
  return [longitude, latitude]
}

function readLine(value: unknown): LonLat[] {
  if (!Array.isArray(value)) throw new Unusable('its coordinates are not a list')
  const positions = value.map(readPosition)
  if (positions.length < 2) throw new Unusable('a line needs at least two positions')
  return positions
}

function readRings(value: unknown): LonLat[][] {
  if (!Array.isArray(value) || value.length === 0) throw new Unusable('an area needs at least one ring')
  return value.map((ring) => {
    if (!Array.isArray(ring)) throw new Unusable('a ring is not a list of positions')
    const positions = ring.map(readPosition)
    const first = positions[0]
    const last = positions.at(-1)
    const isClosed = first && last && first[0] === last[0] && first[1] === last[1]
    if (positions.length < 4 || !isClosed) {
      throw new Unusable('a ring needs at least four positions, the last the same as the first')
    }
    return positions
  })
}
