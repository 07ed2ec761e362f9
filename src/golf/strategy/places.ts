import { type Crown, crownOfArea } from '#golf/course/crown.ts'
import { GROUND_CLASSES, type Ground, groundCode } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { type HoleRaster, holeRaster, type RasterFrame } from '#golf/course/hole-raster.ts'
import { distance } from '#numbers/geometry/point.ts'
import { type DropGround, dropGround } from './drop-ground.ts'
import {
  BEHIND_TEE_METRES,
  BEYOND_PIN_METRES,
  CELL_METRES,
  CORRIDOR_METRES,
  DEFAULT_SHARES,
  FINE_CELL_METRES,
  SHORT_GAME_METRES,
} from './settings.ts'

/**
 * Every place where a ball can lie: coarse cells over the hole, numbered first, and fine cells around the pin.
 * A place is one number; the arrays hold what is known of each.
 */
export interface Places {
  readonly count: number
  readonly coarse: RasterFrame
  readonly coarseCount: number
  readonly fine: RasterFrame
  /** Fine cells to the side of a coarse one. */
  readonly finePerCoarse: number
  /** Place number of each fine cell, −1 where the coarse cell stands. */
  readonly finePlace: Int32Array
  /** 1 for coarse cells that the fine disc may touch, or that lie on the green. */
  readonly isNearPin: Uint8Array
  readonly x: Float64Array
  readonly y: Float64Array
  /** Code of the ground class. */
  readonly ground: Uint8Array
  /** Shares of balls at rest here that cannot be played, and that are not found. */
  readonly unplayable: Float64Array
  readonly lost: Float64Array
  /** What stands over each place, a number in {@link crowns}; 0 = nothing. Single trees are not among it. */
  readonly crown: Uint8Array
  readonly crowns: readonly (Crown | null)[]
  readonly toPin: Float64Array
  /** 1 where the value is that of a chip, a pitch or a putt: the end of the full game. */
  readonly isShortGame: Uint8Array
  /** Places on the green, and the number of each place among them, −1 elsewhere. */
  readonly greenPlaces: Int32Array
  readonly greenIndex: Int32Array
  /** The outlines from which the cells were painted. */
  readonly outlines: DropGround
}

/**
 * Lays the places over a hole. Columns are centred on the y axis and fine cells on the pin, so that a mirrored hole
 * has exactly mirrored places.
 */
export function placesOf(hole: Hole, cellMetres: number = CELL_METRES): Places {
  const coarse = coarseFrame(hole, cellMetres)
  const coarseCount = coarse.columns * coarse.rows
  // A whole number of fine cells to a coarse one, so that a strike moves every cell by the same whole numbers; an odd one,
  // so that none lies on the edge between two coarse cells, where left and right would have to choose alike.
  const finePerCoarse = 2 * Math.ceil((cellMetres / FINE_CELL_METRES - 1) / 2) + 1
  const fineMetres = cellMetres / finePerCoarse
  const fineReach = Math.ceil(SHORT_GAME_METRES / fineMetres)
  const fine: RasterFrame = {
    originX: hole.pin[0] - fineReach * fineMetres,
    originY: hole.pin[1] - fineReach * fineMetres,
    resolution: fineMetres,
    columns: 2 * fineReach + 1,
    rows: 2 * fineReach + 1,
  }
  const finePlace = new Int32Array(fine.columns * fine.rows).fill(-1)
  let count = coarseCount
  for (let cell = 0; cell < finePlace.length; cell++) {
    const [x, y] = centre(fine, cell)
    if (distance([x, y], hole.pin) <= SHORT_GAME_METRES) finePlace[cell] = count++
  }
  const crowns: (Crown | null)[] = [null]
  const places: Places = {
    count,
    coarse,
    coarseCount,
    fine,
    finePerCoarse,
    finePlace,
    isNearPin: new Uint8Array(coarseCount),
    x: new Float64Array(count),
    y: new Float64Array(count),
    ground: new Uint8Array(count),
    unplayable: new Float64Array(count),
    lost: new Float64Array(count),
    crown: new Uint8Array(count),
    crowns,
    toPin: new Float64Array(count),
    isShortGame: new Uint8Array(count),
    greenPlaces: new Int32Array(0),
    greenIndex: new Int32Array(count).fill(-1),
    outlines: dropGround(hole),
  }
  const coarseGround = holeRaster(hole, coarse)
  for (let cell = 0; cell < coarseCount; cell++) {
    fill(places, crowns, cell, centre(coarse, cell), coarseGround, cell, hole)
    const isNear = (places.toPin[cell] as number) <= SHORT_GAME_METRES + cellMetres
    places.isNearPin[cell] = isNear || places.ground[cell] === GREEN ? 1 : 0
  }
  const fineGround = holeRaster(hole, fine)
  for (let cell = 0; cell < finePlace.length; cell++) {
    const place = finePlace[cell] as number
    if (place >= 0) fill(places, crowns, place, centre(fine, cell), fineGround, cell, hole)
  }
  const greenPlaces = Int32Array.from(
    Array.from(places.ground.keys()).filter((place) => places.ground[place] === GREEN),
  )
  for (const [index, place] of greenPlaces.entries()) places.greenIndex[place] = index
  return { ...places, greenPlaces }
}

const GREEN = groundCode('green')

/** The place that holds a point; what leaves the raster lies on its nearest edge. */
export function placeAt(places: Places, x: number, y: number): number {
  const { coarse, fine } = places
  const column = clamp(Math.round((x - coarse.originX) / coarse.resolution), coarse.columns)
  const row = clamp(Math.round((y - coarse.originY) / coarse.resolution), coarse.rows)
  const cell = row * coarse.columns + column
  if (places.isNearPin[cell] === 0) return cell
  const fineColumn = Math.round((x - fine.originX) / fine.resolution)
  const fineRow = Math.round((y - fine.originY) / fine.resolution)
  if (fineColumn < 0 || fineColumn >= fine.columns || fineRow < 0 || fineRow >= fine.rows) return cell
  const place = places.finePlace[fineRow * fine.columns + fineColumn] as number
  return place >= 0 ? place : cell
}

/**
 * How fine cells are counted from coarse ones. The middle of coarse cell 0 lies `off` fine cells from fine cell 0; a fine
 * cell's number with `toCell` added, divided by the fine cells to a coarse one and rounded down, is its coarse cell.
 */
export function fineOffsets({ coarse, fine, finePerCoarse }: Places): {
  readonly offX: number
  readonly offY: number
  readonly toCellX: number
  readonly toCellY: number
} {
  const offX = (coarse.originX - fine.originX) / fine.resolution
  const offY = (coarse.originY - fine.originY) / fine.resolution
  return {
    offX,
    offY,
    toCellX: Math.floor(finePerCoarse / 2 - offX),
    toCellY: Math.floor(finePerCoarse / 2 - offY),
  }
}

/** The ground class of a place. */
export function groundOf(places: Places, place: number): Ground {
  return GROUND_CLASSES[places.ground[place] as number] as Ground
}

function coarseFrame(hole: Hole, resolution: number): RasterFrame {
  const xs = hole.line.map(([x]) => x)
  const ys = hole.line.map(([, y]) => y)
  const left = Math.floor((Math.min(...xs) - CORRIDOR_METRES) / resolution)
  const right = Math.ceil((Math.max(...xs) + CORRIDOR_METRES) / resolution)
  const bottom = Math.floor((Math.min(...ys) - BEHIND_TEE_METRES) / resolution)
  const top = Math.ceil((Math.max(...ys) + BEYOND_PIN_METRES) / resolution)
  return {
    originX: left * resolution,
    originY: bottom * resolution,
    resolution,
    columns: right - left + 1,
    rows: top - bottom + 1,
  }
}

function centre(frame: RasterFrame, cell: number): [number, number] {
  const row = Math.floor(cell / frame.columns)
  return [
    frame.originX + (cell - row * frame.columns) * frame.resolution,
    frame.originY + row * frame.resolution,
  ]
}

function fill(
  places: Places,
  crowns: (Crown | null)[],
  place: number,
  at: [number, number],
  raster: HoleRaster,
  cell: number,
  hole: Hole,
): void {
  const code = raster.ground.cells[cell] as number
  const ground = GROUND_CLASSES[code] as Ground
  const defaults = ground in DEFAULT_SHARES ? DEFAULT_SHARES[ground as keyof typeof DEFAULT_SHARES] : null
  const figures = raster.figures[raster.figureCodes[cell] as number] ?? null
  places.x[place] = at[0]
  places.y[place] = at[1]
  places.ground[place] = code
  places.unplayable[place] = figures?.unplayableShare ?? defaults?.unplayable ?? 0
  places.lost[place] = figures?.lostShare ?? defaults?.lost ?? 0
  places.crown[place] = crownNumber(crowns, crownOfArea(ground, figures))
  places.toPin[place] = distance(at, hole.pin)
  places.isShortGame[place] =
    ground === 'green' || (places.toPin[place] as number) <= SHORT_GAME_METRES ? 1 : 0
}

function clamp(index: number, size: number): number {
  return index < 0 ? 0 : index >= size ? size - 1 : index
}

/** The number of a crown, added when new; what finds no room any more counts as the first one. */
function crownNumber(crowns: (Crown | null)[], crown: Crown | null): number {
  if (crown === null) return 0
  const known = crowns.findIndex(
    (one) =>
      one?.topMetres === crown.topMetres &&
      one.baseMetres === crown.baseMetres &&
      one.densityPerMetre === crown.densityPerMetre,
  )
  if (known > 0) return known
  return crowns.length > 255 ? 1 : crowns.push(crown) - 1
}
