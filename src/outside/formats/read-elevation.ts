import { Failure } from '#faults/failure.ts'
import type { ElevationGrid } from '#golf/course/elevation-grid.ts'
import { readGeotiffGrid } from './geotiff-grid.ts'
import { LARGEST_TILE_BYTES, readHgt } from './hgt.ts'
import { unzipOne } from './unzip-one.ts'

/**
 * A file of heights as a grid: GeoTIFF, an SRTM tile (.hgt), or a zip with one such tile. Throws `MAR-ELEV-001` when it
 * is none of these, and what reading each throws.
 */
export async function readElevation(bytes: Uint8Array, fileName: string): Promise<ElevationGrid> {
  const [first, second, third, fourth] = bytes
  if (first === 0x50 && second === 0x4b) {
    const tile = unzipOne(bytes, '.hgt', LARGEST_TILE_BYTES, fileName)
    return readHgt(tile.bytes, tile.name)
  }
  // Before the marks of a TIFF: a tile has no mark, and its first heights can be any number.
  if (fileName.toLowerCase().endsWith('.hgt')) return readHgt(bytes, fileName)
  const isLittle = first === 0x49 && second === 0x49 && (third === 42 || third === 43) && fourth === 0
  const isBig = first === 0x4d && second === 0x4d && third === 0 && (fourth === 42 || fourth === 43)
  if (isLittle || isBig) return await readGeotiffGrid(bytes, fileName)
  throw new Failure(
    'MAR-ELEV-001',
    'Heights are read from a GeoTIFF, an SRTM tile (.hgt), or a zip with one such tile.',
    fileName,
  )
}
