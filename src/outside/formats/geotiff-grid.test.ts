import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { ElevationGrid } from '#golf/course/elevation-grid.ts'
import { readElevation } from './read-elevation.ts'

const PORTLAND = 'test/fixtures/courses/portland-ned-nodata-crop-deflate-tiled.tif'

type Tag = readonly [tag: number, type: number, values: readonly number[]]

// TIFF 6.0, section 2: types of fields and their bytes.
const [ASCII, SHORT, LONG, DOUBLE] = [2, 3, 4, 12]
const BYTES = new Map([
  [ASCII, 1],
  [SHORT, 2],
  [LONG, 4],
  [DOUBLE, 8],
])

/** How a grid of the tests differs from one of areas on WGS 84, 10° E 50° N its corner. */
interface Differences {
  readonly keys?: Readonly<Record<number, number>>
  readonly tie?: readonly number[]
  readonly noData?: string
}

/** A GeoTIFF of 3 × 2 16-bit cells of a tenth of a degree, one strip a row, as TIFF 6.0 and OGC 19-008r4 lay it out. */
function written(different: Differences, heights: readonly number[] = [1, 2, 3, 4, 5, 6]): Uint8Array {
  const keys = Object.entries({ 1024: 2, 1025: 1, 2048: 4326, ...different.keys })
  const tags: Tag[] = [
    [256, SHORT, [3]],
    [257, SHORT, [2]],
    [258, SHORT, [16]],
    [259, SHORT, [1]],
    [262, SHORT, [1]],
    [273, LONG, [8, 14]],
    [277, SHORT, [1]],
    [278, SHORT, [1]],
    [279, LONG, [6, 6]],
    [339, SHORT, [2]],
    [33550, DOUBLE, [0.1, 0.1, 0]],
    [33922, DOUBLE, different.tie ?? [0, 0, 0, 10, 50, 0]],
    [34735, SHORT, [1, 1, 0, keys.length, ...keys.flatMap(([key, value]) => [Number(key), 0, 1, value])]],
  ]
  if (different.noData !== undefined)
    tags.push([42113, ASCII, [...`${different.noData}\0`].map((letter) => letter.charCodeAt(0))])
  const view = new DataView(new ArrayBuffer(2000))
  const put = (at: number, type: number, value: number): void => {
    if (type === ASCII) view.setUint8(at, value)
    else if (type === SHORT) view.setUint16(at, value)
    else if (type === LONG) view.setUint32(at, value)
    else view.setFloat64(at, value)
  }
  for (const [at, value] of [0x4d4d, 42, 0, 20].entries()) view.setUint16(at * 2, value)
  for (const [at, height] of heights.entries()) view.setInt16(8 + at * 2, height)
  view.setUint16(20, tags.length)
  let free = 22 + tags.length * 12 + 4
  for (const [index, [tag, type, values]] of tags.entries()) {
    const at = 22 + index * 12
    const size = BYTES.get(type) ?? 0
    view.setUint16(at, tag)
    view.setUint16(at + 2, type)
    view.setUint32(at + 4, values.length)
    const isInside = size * values.length <= 4
    if (!isInside) view.setUint32(at + 8, free)
    for (const [i, value] of values.entries()) put((isInside ? at + 8 : free) + i * size, type, value)
    if (!isInside) free += size * values.length
  }
  return new Uint8Array(view.buffer)
}

function grid(different: Differences, heights?: readonly number[]): Promise<ElevationGrid> {
  return readElevation(written(different, heights), 'grid.tif')
}

describe('readGeotiffGrid', () => {
  it('reads floating-point tiles and knows which cells have no data', async () => {
    const portland = await readElevation(readFileSync(PORTLAND), 'portland.tif')
    // Stated with the file (test/fixtures/README.md): 4,160 of 260 × 260 cells.
    expect(portland.emptyCells).toBe(4160)
    // A third of an arc-second of latitude is about 10.3 m.
    expect(portland.cellMetres).toBeCloseTo(10.3, 1)
    const step = 1 / 10_800
    const [west, north] = [-122.68222222222222, 45.53148148148148]
    const centre = portland.heightAt(west + 0.5 * step, north - 130.5 * step)
    // The cell as the file holds it: column 0, row 130.
    expect(centre).toBeCloseTo(25.46839, 3)
    expect(portland.heightAt(west - step, north - 130.5 * step)).toBeNull()
    let empty = 0
    for (let row = 0; row < 260; row++)
      for (let column = 0; column < 260; column++)
        if (portland.heightAt(west + (column + 0.5) * step, north - (row + 0.5) * step) === null) empty++
    // A centre needs no neighbour.
    expect(empty).toBe(4160)
  })

  it('knows a pixel that is an area from one that is a point', async () => {
    const areas = await grid({})
    expect(areas.heightAt(10.05, 49.95)).toBeCloseTo(1, 9)
    expect(areas.heightAt(10.15, 49.9)).toBeCloseTo(3.5, 9)
    expect(areas.heightAt(10, 50)).toBeCloseTo(1, 9)
    expect(areas.heightAt(10.3, 49.8)).toBeCloseTo(6, 9)
    expect(areas.heightAt(10.31, 49.9)).toBeNull()
    const points = await grid({ keys: { 1025: 2 } })
    expect(points.heightAt(10, 50)).toBeCloseTo(1, 9)
    expect(points.heightAt(10.1, 49.95)).toBeCloseTo(3.5, 9)
    expect(points.heightAt(10.21, 49.95)).toBeNull()
  })

  it('counts the tie point from the cell it is tied to', async () => {
    const tied = await grid({ tie: [1, 1, 0, 10.1, 49.9, 0] })
    expect(tied.heightAt(10.05, 49.95)).toBeCloseTo(1, 9)
  })

  it('takes a cell near the mark, and one no ground has, as empty', async () => {
    const holed = await grid({ noData: '-9999.0001' }, [1, -9999, 3, -32768, 5, 6])
    expect(holed.emptyCells).toBe(2)
    expect(holed.heightAt(10.15, 49.95)).toBeNull()
    expect(holed.heightAt(10.25, 49.95)).toBeCloseTo(3, 6)
  })

  it('counts feet as feet', async () => {
    const feet = await grid({ keys: { 4099: 9002 } })
    expect(feet.heightAt(10.25, 49.85)).toBeCloseTo(6 * 0.3048, 6)
  })

  it('refuses what is projected, on an unknown datum, damaged, or no grid', async () => {
    const refused = (code: string): unknown => expect.objectContaining({ code })
    await expect(grid({ keys: { 1024: 1, 3072: 32610 } })).rejects.toEqual(refused('MAR-ELEV-006'))
    await expect(grid({ keys: { 2048: 4277 } })).rejects.toEqual(refused('MAR-ELEV-006'))
    const cut = readFileSync(PORTLAND).subarray(0, 20_000)
    await expect(readElevation(cut, 'cut.tif')).rejects.toEqual(refused('MAR-ELEV-005'))
    await expect(readElevation(new Uint8Array([1, 2, 3]), 'x.bin')).rejects.toEqual(refused('MAR-ELEV-001'))
  })
})
