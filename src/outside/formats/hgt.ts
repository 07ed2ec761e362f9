import { Failure } from '#faults/failure.ts'
import type { ElevationGrid } from '#golf/course/elevation-grid.ts'
import { gridOfCells } from './grid-of-cells.ts'

/** What stands in a cell that the radar did not see (SRTM User Guide, section 2.1). */
const VOID = -32768

/** Points on a side of a tile of one degree at 3 and at 1 arc-second; the outermost lie on the edges of the degree. */
const SIDES = [1201, 3601] as const

/** Bytes of the largest tile. */
export const LARGEST_TILE_BYTES: number = SIDES[1] * SIDES[1] * 2

/**
 * A tile of the Shuttle Radar Topography Mission (.hgt): 16-bit heights in metres, high byte first, from the north-west
 * corner on, with the south-west corner in the file name. Throws `MAR-ELEV-002` (size) and `MAR-ELEV-003` (name).
 */
export function readHgt(bytes: Uint8Array, fileName: string): ElevationGrid {
  const [, ns = '', south, ew = '', west] = /^([NS])(\d{2})([EW])(\d{3})\D/i.exec(fileName) ?? []
  if (south === undefined || west === undefined)
    throw new Failure(
      'MAR-ELEV-003',
      'The name of a tile says where it lies: N55W003.hgt has its south-west corner at 55° N 3° W.',
      fileName,
    )
  const side = SIDES.find((points) => points * points * 2 === bytes.length)
  if (side === undefined)
    throw new Failure(
      'MAR-ELEV-002',
      `The tile has ${bytes.length} bytes; one of 3 arc-seconds has 2884802 and one of 1 arc-second 25934402.`,
      fileName,
    )
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const heights = Float32Array.from({ length: side * side }, (_, index) => {
    const height = view.getInt16(index * 2)
    return height === VOID ? Number.NaN : height
  })
  const step = 1 / (side - 1)
  return gridOfCells({
    heights,
    columns: side,
    rows: side,
    west: Number(west) * (ew.toUpperCase() === 'W' ? -1 : 1),
    north: Number(south) * (ns.toUpperCase() === 'S' ? -1 : 1) + 1,
    stepLongitude: step,
    stepLatitude: step,
    margin: 0,
    source: fileName,
  })
}
