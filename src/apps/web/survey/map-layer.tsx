import { type ReactElement, useEffect, useRef, useState } from 'react'
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
  /** Whether some of what is seen does not come. */
  readonly onMissing: (isMissing: boolean) => void
}): ReactElement {
  const { map, toSheet, toEarth, frame, pixelsPerMetre, onMissing } = props
  const { left, top, right, bottom } = frame
  const first = toEarth([left, top])
  const corners = [first, toEarth([right, top]), toEarth([left, bottom]), toEarth([right, bottom])]
  const level = Math.min(map.zoom, levelFor(first[1], pixelsPerMetre))
  const tiles = tilesOver(corners, level, MOST_TILES)
  const [missing, setMissing] = useState<ReadonlySet<string>>(new Set())
  const isMissing = tiles.some((tile) => missing.has(addressOf(tile)))
  useEffect(() => onMissing(isMissing), [isMissing, onMissing])
  const onCome = (address: string, hasCome: boolean): void =>
    setMissing((before) => {
      if (before.has(address) !== hasCome) return before
      return new Set(hasCome ? [...before].filter((one) => one !== address) : [...before, address])
    })
  return (
    <>
      {tiles.map((tile) => {
        const address = addressOf(tile)
        return (
          <TileImage
            key={address}
            address={address}
            transform={tileTransform(tile, toSheet)}
            onCome={(hasCome) => onCome(address, hasCome)}
          />
        )
      })}
    </>
  )
}

/** A tile, asked for again after a while when it does not come, each time after twice as long. */
function TileImage(props: {
  readonly address: string
  readonly transform: string
  readonly onCome: (hasCome: boolean) => void
}): ReactElement {
  const { address, transform, onCome } = props
  const [asked, setAsked] = useState(0)
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  useEffect(() => () => clearTimeout(timer.current), [])
  return (
    <img
      className="under-tile"
      src={asked === 0 ? address : `${address}?again=${asked}`}
      alt=""
      width={TILE_PIXELS + OVERLAP_PIXELS}
      height={TILE_PIXELS + OVERLAP_PIXELS}
      draggable={false}
      style={{ transform }}
      onLoad={() => onCome(true)}
      onError={() => {
        onCome(false)
        timer.current = setTimeout(() => setAsked(asked + 1), AGAIN_MILLISECONDS * 2 ** asked)
      }}
    />
  )
}

/** Where the server hands a tile on; beyond the date line they are counted on. */
function addressOf({ z, x, y }: Tile): string {
  const side = 2 ** z
  return `/map/${z}/${((x % side) + side) % side}/${y}`
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

/** A tile that did not come is asked for again after so long. Our choice: no burden to a server that has none. */
const AGAIN_MILLISECONDS = 4000

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
