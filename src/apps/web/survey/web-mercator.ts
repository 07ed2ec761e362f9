import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import { degreesToRadians, radiansToDegrees } from '#numbers/units/units.ts'

/** Pixels along a side of a tile. */
export const TILE_PIXELS = 256

/** A tile of a map: level, and its number from the west, counted on beyond the date line, and from the north. */
export interface Tile {
  readonly z: number
  readonly x: number
  readonly y: number
}

/**
 * A place in pixels of a level, from the north-western corner of the map: the Mercator projection of the web, EPSG 3857
 * (IOGP Guidance Note 7-2, 3.2.1.2), with the whole earth one tile at level 0.
 */
export function pixelAt(level: number, [longitude, latitude]: LonLat): readonly [u: number, v: number] {
  const side = TILE_PIXELS * 2 ** level
  const northing = Math.asinh(Math.tan(degreesToRadians(latitude)))
  return [side * (longitude / 360 + 0.5), side * (0.5 - northing / (2 * Math.PI))]
}

/** And back. */
export function placeAtPixel(level: number, [u, v]: readonly [u: number, v: number]): LonLat {
  const side = TILE_PIXELS * 2 ** level
  const northing = 2 * Math.PI * (0.5 - v / side)
  return [360 * (u / side - 0.5), radiansToDegrees(Math.atan(Math.sinh(northing)))]
}

/** The tiles that cover the box about some places, row by row, at the nearest level of at most `most` of which that takes no more than `count`. */
export function tilesOver(places: readonly LonLat[], most: number, count: number): Tile[] {
  const reference = places[0]?.[0] ?? 0
  const near = places.map(
    ([longitude, latitude]): LonLat => [
      longitude - 360 * Math.round((longitude - reference) / 360),
      latitude,
    ],
  )
  for (let z = most; z > 0; z--) {
    const pixels = near.map((place) => pixelAt(z, place))
    const span = (part: 0 | 1): readonly [number, number] => {
      const numbers = pixels.map((pixel) => Math.floor(pixel[part] / TILE_PIXELS))
      return [Math.min(...numbers), Math.max(...numbers)]
    }
    const held = (row: number): number => Math.min(2 ** z - 1, Math.max(0, row))
    const [west, east] = span(0)
    const [north, south] = span(1).map(held) as [number, number]
    const [columns, rows] = [east - west + 1, south - north + 1]
    if (columns * rows > count) continue
    return Array.from({ length: columns * rows }, (_, index) => ({
      z,
      x: west + (index % columns),
      y: north + Math.floor(index / columns),
    }))
  }
  return []
}

/** The level whose pixels are no larger than a screen's at a latitude, with so many screen pixels to a metre. */
export function levelFor(latitude: number, pixelsPerMetre: number): number {
  const round = EQUATOR_METRES * Math.cos(degreesToRadians(latitude))
  return Math.max(1, Math.ceil(Math.log2((round * pixelsPerMetre) / TILE_PIXELS)))
}

/** Round the equator of WGS 84. */
const EQUATOR_METRES = 2 * Math.PI * 6_378_137
