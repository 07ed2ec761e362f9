import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readHgt } from './hgt.ts'
import { readElevation } from './read-elevation.ts'

/** A tile of 3 arc-seconds whose heights are those of `height` at its column from the west and row from the north. */
function tile(height: (column: number, row: number) => number): Uint8Array {
  const view = new DataView(new ArrayBuffer(1201 * 1201 * 2))
  for (let row = 0; row < 1201; row++)
    for (let column = 0; column < 1201; column++)
      view.setInt16((row * 1201 + column) * 2, height(column, row))
  return new Uint8Array(view.buffer)
}

describe('readHgt', () => {
  it('gives the height of a real tile that is stated for it, out of its zip', async () => {
    const zip = readFileSync('test/fixtures/courses/N55W003.hgt.zip')
    const grid = await readElevation(zip, 'N55W003.hgt.zip')
    // Stated with the tile (test/fixtures/README.md): bilinear, SRTM 3 arc-seconds.
    expect(grid.heightAt(-2.673, 55.9629)).toBeCloseTo(209.1, 1)
    // An arc-second of latitude is about 30.9 m: a cell of three is 93 m from north to south.
    expect(grid.cellMetres).toBeCloseTo(92.8, 0)
    expect(grid.heightAt(-1.99, 55.5)).toBeNull()
    expect(grid.heightAt(-2.5, 54.99)).toBeNull()
  })

  it('lies where its name says, with its outermost points on the edges of the degree', () => {
    const grid = readHgt(
      tile((column, row) => column + 2 * row),
      's12e034.HGT',
    )
    expect(grid.heightAt(34, -11)).toBe(0)
    expect(grid.heightAt(35, -11)).toBe(1200)
    expect(grid.heightAt(34, -12)).toBe(2400)
    expect(grid.heightAt(35, -12)).toBe(3600)
    // Linear heights stay linear between the points.
    expect(grid.heightAt(34.00125, -11.1234)).toBeCloseTo(1.5 + 2 * 148.08, 6)
    expect(grid.heightAt(33.999, -11.5)).toBeNull()
    expect(grid.heightAt(Number.NaN, -11.5)).toBeNull()
  })

  it('has no height where a point it needs is void, and one right beside', () => {
    const grid = readHgt(
      tile((column, row) => (column === 600 && row === 600 ? -32768 : -7)),
      'N00E000.hgt',
    )
    expect(grid.emptyCells).toBe(1)
    expect(grid.heightAt(0.5, 0.5)).toBeNull()
    expect(grid.heightAt(0.5 + 0.9 / 1200, 0.5)).toBeNull()
    expect(grid.heightAt(0.5 + 1 / 1200, 0.5 + 1 / 2400)).toBeCloseTo(-7, 9)
    expect(grid.heightAt(0.5, 0.5 + 1.5 / 1200)).toBeCloseTo(-7, 9)
  })

  it('reads tiles of 1 arc-second and refuses other sizes and names', () => {
    const grid = readHgt(new Uint8Array(3601 * 3601 * 2), 'N55W003.hgt')
    expect(grid.heightAt(-2.673, 55.9629)).toBe(0)
    expect(grid.cellMetres).toBeCloseTo(30.9, 0)
    expect(() => readHgt(new Uint8Array(100), 'N55W003.hgt')).toThrow(
      expect.objectContaining({ code: 'MAR-ELEV-002' }),
    )
    expect(() => readHgt(new Uint8Array(1201 * 1201 * 2), 'hills.hgt')).toThrow(
      expect.objectContaining({ code: 'MAR-ELEV-003' }),
    )
  })

  it('refuses a zip that is cut short, damaged or holds no tile', async () => {
    const zip = readFileSync('test/fixtures/courses/N55W003.hgt.zip')
    const refused = expect.objectContaining({ code: 'MAR-ELEV-004' })
    await expect(readElevation(zip.subarray(0, 5000), 'a.zip')).rejects.toEqual(refused)
    const damaged = Uint8Array.from(zip)
    damaged.fill(0x55, 600_000, 600_100)
    await expect(readElevation(damaged, 'a.zip')).rejects.toEqual(refused)
    const renamed = Uint8Array.from(zip, (byte, at) =>
      at > zip.length - 200 && byte === 0x68 && zip[at + 1] === 0x67 ? 0x78 : byte,
    )
    await expect(readElevation(renamed, 'a.zip')).rejects.toEqual(refused)
  })
})
