import type { ReactElement } from 'react'
import type { Point } from '#numbers/geometry/point.ts'
import type { LonLat } from '#numbers/geometry/tangent-plane.ts'
import type { Frame } from '#paper/draw/sheet.ts'
import { levelFor, placeAtPixel, TILE_PIXELS, type Tile, tilesOver } from './web-mercator.ts'

/** A map that the server hands on. */
export interface ServedMap {
  /** What its owner wants said beside it. */
  readonly credit: string
  /** The nearest level that it has. */
  readonly zoom: number
}

/** Tiles of a map under a chart, each laid where its corners belong. */
export function MapLayer(props: {
  readonly map: ServedMap
  readonly toSheet: (place: LonLat) => Point
  readonly toEarth: (at: Point) => LonLat
  /** What of the sheet is seen. */
  readonly frame: Frame
  readonly pixelsPerMetre: number
  readonly onMissing: () => void
}): ReactElement {
  const { map, toSheet, toEarth, frame, pixelsPerMetre, onMissing } = props
  const { left, top, right, bottom } = frame
  const first = toEarth([left, top])
  const corners = [first, toEarth([right, top]), toEarth([left, bottom]), toEarth([right, bottom])]
  const level = Math.min(map.zoom, levelFor(first[1], pixelsPerMetre))
  return (
    <>
      {tilesOver(corners, level, MOST_TILES).map((tile) => (
        <img
          key={`${tile.z}/${tile.x}/${tile.y}`}
          className="under-tile"
          src={`/map/${tile.z}/${tile.x}/${tile.y}`}
          alt=""
          width={TILE_PIXELS + OVERLAP_PIXELS}
          height={TILE_PIXELS + OVERLAP_PIXELS}
          draggable={false}
          style={{ transform: tileTransform(tile, toSheet) }}
          onError={onMissing}
        />
      ))}
    </>
  )
}

/** What the map's owner wants said, and that some of it does not come. */
export function MapCredit(props: { readonly map: ServedMap; readonly isMissing: boolean }): ReactElement {
  return (
    <p className="map-credit" role="status">
      {props.isMissing && 'The map’s server does not give some of its tiles. '}
      {props.map.credit}
    </p>
  )
}

/** So many tiles are asked for at a time: a large screen at twice its own pixels. Our choice. */
const MOST_TILES = 80

/** Turned tiles would show the paper between them. */
const OVERLAP_PIXELS = 0.5

/** A tile is so small that straight lines between its corners are true to a hand's breadth. */
function tileTransform({ z, x, y }: Tile, toSheet: (place: LonLat) => Point): string {
  const [left, top] = [TILE_PIXELS * x, TILE_PIXELS * y]
  const origin = toSheet(placeAtPixel(z, [left, top]))
  const right = toSheet(placeAtPixel(z, [left + TILE_PIXELS, top]))
  const down = toSheet(placeAtPixel(z, [left, top + TILE_PIXELS]))
  const by = (to: Point): string =>
    `${(to[0] - origin[0]) / TILE_PIXELS},${(to[1] - origin[1]) / TILE_PIXELS}`
  return `matrix(${by(right)},${by(down)},${origin[0]},${origin[1]})`
}
