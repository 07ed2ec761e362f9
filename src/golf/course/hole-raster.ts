import { paintPolygon } from '#numbers/raster/paint-polygon.ts'
import type { Raster } from '#numbers/raster/raster.ts'
import type { Area } from './course.ts'
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

/** The ground of a hole cell by cell, with what its areas say of balls in them and of their trees. */
export interface HoleRaster {
  /** Codes of `GROUND_CLASSES`. */
  readonly ground: Raster
  /** Index into {@link figures} for each cell; 0 = the defaults of its ground. */
  readonly figureCodes: Uint8Array
  readonly figures: readonly (AreaFigures | null)[]
}

/** What one area says of balls in it and of its height; `null` = the default of its ground. */
export type AreaFigures = Pick<Area, FigureName>

type FigureName = 'unplayableShare' | 'lostShare' | 'heightMetres' | 'crownBaseMetres' | 'densityPerMetre'

const FIGURES: readonly FigureName[] = [
  'unplayableShare',
  'lostShare',
  'heightMetres',
  'crownBaseMetres',
  'densityPerMetre',
]

/** Paints the areas of a hole, in the fixed order of the ground classes, into a raster of the hole frame. */
export function holeRaster(hole: Hole, frame: RasterFrame): HoleRaster {
  const cells = new Uint8Array(frame.columns * frame.rows).fill(groundCode(DEFAULT_GROUND))
  const ground: Raster = { ...frame, cells }
  const figureCodes = new Uint8Array(cells.length)
  const figuresRaster: Raster = { ...frame, cells: figureCodes }
  const figures: (AreaFigures | null)[] = [null]
  for (const area of paintedAreas(hole)) {
    paintPolygon(ground, area.polygon, groundCode(area.ground))
    paintPolygon(figuresRaster, area.polygon, figureCode(figures, area))
  }
  return { ground, figureCodes, figures }
}

/** The index of an area's figures, added when new; more than 255 different ones fall back to the defaults. */
function figureCode(figures: (AreaFigures | null)[], area: Area): number {
  if (FIGURES.every((name) => area[name] === null)) return 0
  const known = figures.findIndex((one) => one !== null && FIGURES.every((name) => one[name] === area[name]))
  if (known >= 0) return known
  if (figures.length > 255) return 0
  const { unplayableShare, lostShare, heightMetres, crownBaseMetres, densityPerMetre } = area
  return figures.push({ unplayableShare, lostShare, heightMetres, crownBaseMetres, densityPerMetre }) - 1
}
