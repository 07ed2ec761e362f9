import { paintPolygon } from '#numbers/raster/paint-polygon.ts'
import type { Raster } from '#numbers/raster/raster.ts'
import { groundCode } from './ground.ts'
import type { Hole } from './hole.ts'
import { DEFAULT_GROUND, paintedAreas } from './painted-areas.ts'

/** Where a raster of a hole lies: centre of its first cell in the hole frame, metres, and its size. */
export interface RasterFrame {
  readonly originX: number
  readonly originY: number
  readonly resolution: number
  readonly columns: number
  readonly rows: number
}

/** The ground of a hole cell by cell, with the shares of balls that cannot be played or found. */
export interface HoleRaster {
  /** Codes of `GROUND_CLASSES`. */
  readonly ground: Raster
  /** Index into {@link shares} for each cell; 0 = the defaults of its ground. */
  readonly shareCodes: Uint8Array
  readonly shares: readonly (AreaShares | null)[]
}

/** What one area says of balls in it; `null` = the default of its ground. */
interface AreaShares {
  readonly unplayable: number | null
  readonly lost: number | null
}

/** Paints the areas of a hole, in the fixed order of the ground classes, into a raster of the hole frame. */
export function holeRaster(hole: Hole, frame: RasterFrame): HoleRaster {
  const cells = new Uint8Array(frame.columns * frame.rows).fill(groundCode(DEFAULT_GROUND))
  const ground: Raster = { ...frame, cells }
  const shareCodes = new Uint8Array(cells.length)
  const sharesRaster: Raster = { ...frame, cells: shareCodes }
  const shares: (AreaShares | null)[] = [null]
  for (const area of paintedAreas(hole)) {
    paintPolygon(ground, area.polygon, groundCode(area.ground))
    paintPolygon(sharesRaster, area.polygon, shareCode(shares, area.unplayableShare, area.lostShare))
  }
  return { ground, shareCodes, shares }
}

/** The index of a pair of shares, added when new; more than 255 different pairs fall back to the defaults. */
function shareCode(shares: (AreaShares | null)[], unplayable: number | null, lost: number | null): number {
  if (unplayable === null && lost === null) return 0
  const known = shares.findIndex(
    (pair) => pair !== null && pair.unplayable === unplayable && pair.lost === lost,
  )
  if (known >= 0) return known
  if (shares.length > 255) return 0
  return shares.push({ unplayable, lost }) - 1
}
