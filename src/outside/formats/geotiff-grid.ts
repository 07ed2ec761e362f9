import type { GeoTIFFImage } from 'geotiff'
import { Failure } from '#faults/failure.ts'
import type { ElevationGrid } from '#golf/course/elevation-grid.ts'
import { gridOfCells } from './grid-of-cells.ts'
import { HEIGHT_METRES, MOST_CELLS, NO_DATA_TOLERANCE_SHARE } from './settings.ts'

/**
 * Datums within about 2 m of WGS 84, far under a cell, by their EPSG codes: WGS 84, its three-dimensional form, NAD83
 * and ETRS89.
 */
const DATUMS: readonly number[] = [4326, 4979, 4269, 4258]

/** Metres of the vertical units (EPSG): metre, international foot, US survey foot. */
const VERTICAL_METRES = new Map([
  [9001, 1],
  [9002, 0.3048],
  [9003, 1200 / 3937],
])

/**
 * A grid of heights in a GeoTIFF (OGC 19-008r4): whole or broken numbers, in tiles or strips, a pixel an area or a
 * point, first band, in longitude and latitude. Throws `MAR-ELEV-005` (damaged or not placed on the ground),
 * `MAR-ELEV-006` (projected, another datum, or turned) and `MAR-ELEV-007` (too many cells).
 */
export async function readGeotiffGrid(bytes: Uint8Array, fileName: string): Promise<ElevationGrid> {
  try {
    // Loaded here, because no other command needs it.
    const { fromArrayBuffer } = await import('geotiff')
    const tiff = await fromArrayBuffer(Uint8Array.from(bytes).buffer)
    return await readImage(await tiff.getImage(), fileName)
  } catch (error) {
    if (error instanceof Failure) throw error
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-ELEV-005', `The GeoTIFF cannot be read: ${reason}`, fileName)
  }
}

async function readImage(image: GeoTIFFImage, fileName: string): Promise<ElevationGrid> {
  const unit = requireDegrees(image, fileName)
  const columns = image.getWidth()
  const rows = image.getHeight()
  if (columns * rows > MOST_CELLS)
    throw new Failure(
      'MAR-ELEV-007',
      `The grid has ${columns} × ${rows} cells; Marram reads up to ${MOST_CELLS} at once. Cut it down to the course.`,
      fileName,
    )
  const isPoint = image.getGeoKeys()?.GTRasterTypeGeoKey === 2
  const shift = isPoint ? 0 : 0.5
  const place = await placement(image, fileName)
  const cells = await image.readRasters({ samples: [0], interleave: true })
  const noData = image.getGDALNoData()
  return gridOfCells({
    heights: Float32Array.from(cells, (cell) => height(cell, noData, unit)),
    columns,
    rows,
    west: place.west + shift * place.stepLongitude,
    north: place.north - shift * place.stepLatitude,
    stepLongitude: place.stepLongitude,
    stepLatitude: place.stepLatitude,
    margin: isPoint ? 0 : 0.5,
    source: fileName,
  })
}

/** The unit of height in metres. Throws `MAR-ELEV-006` when the grid does not lie in degrees on a datum that fits. */
function requireDegrees(image: GeoTIFFImage, fileName: string): number {
  const keys = image.getGeoKeys() ?? {}
  if (keys.GTModelTypeGeoKey !== 2)
    throw unusable('it is projected, or does not say how it lies on the Earth', fileName)
  const datum: unknown = keys.GeographicTypeGeoKey
  if (typeof datum !== 'number' || !DATUMS.includes(datum))
    throw unusable(`its datum (EPSG ${String(datum)}) is not known`, fileName)
  if ((keys.GeogAngularUnitsGeoKey ?? 9102) !== 9102) throw unusable('it is not in degrees', fileName)
  const unit = VERTICAL_METRES.get(keys.VerticalUnitsGeoKey ?? 9001)
  if (unit === undefined) throw unusable('its heights are in neither metres nor feet', fileName)
  return unit
}

interface Placement {
  readonly west: number
  readonly north: number
  readonly stepLongitude: number
  readonly stepLatitude: number
}

/** Where the corner (or, for points, the first point) lies and how far the steps are, degrees. */
async function placement(image: GeoTIFFImage, fileName: string): Promise<Placement> {
  const matrix = numbers(await image.fileDirectory.loadValue('ModelTransformation'))
  const scale = numbers(await image.fileDirectory.loadValue('ModelPixelScale'))
  const tie = numbers(await image.fileDirectory.loadValue('ModelTiepoint'))
  const [a, b, , west, d, e, , north] = matrix ?? fromTie(scale, tie)
  if (a === undefined || e === undefined || west === undefined || north === undefined)
    throw new Failure('MAR-ELEV-005', 'The GeoTIFF does not say where on the ground it lies.', fileName)
  if (b !== 0 || d !== 0 || !(a > 0) || !(e < 0))
    throw unusable('its rows do not run from west to east, north first', fileName)
  return { west, north, stepLongitude: a, stepLatitude: -e }
}

/** The matrix that a scale and one tie point stand for; empty when one is missing. */
function fromTie(scale: number[] | undefined, tie: number[] | undefined): number[] {
  const [x, y] = scale ?? []
  const [column, row, , longitude, latitude] = tie ?? []
  if (x === undefined || y === undefined || column === undefined || row === undefined) return []
  if (longitude === undefined || latitude === undefined) return []
  return [x, 0, 0, longitude - column * x, 0, -y, 0, latitude + row * y]
}

function numbers(value: unknown): number[] | undefined {
  return value === undefined || value === null ? undefined : Array.from(value as ArrayLike<number>)
}

/** A cell in metres; `NaN` when it says that it has none, or what it says is no height on Earth. */
function height(cell: number, noData: number | null, unit: number): number {
  // The mark is written in decimal and the cells in binary, so they need not be equal to the last digit.
  if (noData !== null && Math.abs(cell - noData) <= Math.abs(noData) * NO_DATA_TOLERANCE_SHARE)
    return Number.NaN
  const metres = cell * unit
  return metres >= HEIGHT_METRES.least && metres <= HEIGHT_METRES.most ? metres : Number.NaN
}

function unusable(reason: string, fileName: string): Failure {
  return new Failure(
    'MAR-ELEV-006',
    `The grid cannot be used: ${reason}. Convert it to longitude and latitude on WGS 84, north up.`,
    fileName,
  )
}
