import { planarFrame } from '#numbers/geometry/frame.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { type LonLat, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { degreesToRadians } from '#numbers/units/units.ts'

/** Where on the earth the line of a hole begins, and which way it sets out. */
export interface LineStart {
  readonly latitude: number
  readonly longitude: number
  /** Of the first leg, degrees clockwise from true north. */
  readonly headingDegrees: number
}

const DEGREES = '([+-]?\\d{1,3}(?:\\.\\d+)?)\\s*°?'
const START = new RegExp(
  `^${DEGREES}\\s*[,;\\s]\\s*${DEGREES}\\s*[,;]?\\s+towards?\\s+${DEGREES}(?:\\s*deg)?$`,
  'i',
)
/** Commas are for decimals where a space or semicolon parts the numbers. */
const DECIMAL_COMMAS = /^[+-]?\d{1,3},\d+\s*°?\s*[;\s]\s*[+-]?\d{1,3}(?:,\d+)?\s*°?\s*;?\s+toward/i

/** Reads `55.941207 -1.803104 toward 43`, the note of a start row; `null` when it says no such thing. */
export function readLineStart(note: string): LineStart | null {
  const plain = startWords(note).replaceAll('−', '-')
  const text = DECIMAL_COMMAS.test(plain) ? plain.replaceAll(/(\d),(\d)/g, '$1.$2') : plain
  const [, latitude, longitude, heading] = (START.exec(text) ?? []).map(Number)
  if (latitude === undefined || longitude === undefined || heading === undefined) return null
  const isOnEarth = Math.abs(latitude) <= MOST_LATITUDE && Math.abs(longitude) <= 180
  if (!isOnEarth || heading < 0 || heading > 360) return null
  return { latitude, longitude, headingDegrees: heading }
}

/** The note of a start row without what it may say of the hole. Its commas stay: they may be for decimals. */
export function startWords(note: string): string {
  return note.replaceAll(/[,;]?\s*\b(?:par|(?:stroke\s+)?index)\s*:?\s*\d{1,2}\b\s*[,;]?/gi, '').trim()
}

/** The same in words that {@link readLineStart} reads: a seventh decimal of a degree is a centimetre. */
export function lineStartText({ latitude, longitude, headingDegrees }: LineStart): string {
  return `${latitude.toFixed(7)} ${longitude.toFixed(7)} toward ${headingDegrees.toFixed(2)}`
}

/** The place of a start as positions are written in GeoJSON. */
export function positionOf({ latitude, longitude }: LineStart): LonLat {
  return [longitude, latitude]
}

/** From the plane of a hole's rows, y along the first leg and x to the right of it, to the earth. */
export function fromStart(start: LineStart): (point: Point) => LonLat {
  const { toLonLat } = tangentPlane(positionOf(start))
  const { fromFrame } = planarFrame([0, 0], degreesToRadians(start.headingDegrees))
  return (point) => toLonLat(fromFrame(point))
}

/** And back. */
export function toStart(start: LineStart): (position: LonLat) => Point {
  const { toPlane } = tangentPlane(positionOf(start))
  const { toFrame } = planarFrame([0, 0], degreesToRadians(start.headingDegrees))
  return (position) => toFrame(toPlane(position))
}

/** No course lies nearer to a pole, degrees: nor do map tiles (the square of the Mercator projection ends at 85.05). */
const MOST_LATITUDE = 85
