import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { crc32, deflateSync, inflateSync } from 'node:zlib'
import { readPart } from '#outside/print/read-part.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import type { Drawing } from '#paper/draw/drawing.ts'

/** A drawing as a copier gives it back: dots of 2 or 4 greys, row by row from the top left, 0 = black. */
export interface Copy {
  readonly width: number
  readonly height: number
  readonly bits: 1 | 2
  readonly dots: Uint8Array
}

/** What a poor copier dissolves; a drawing unit (1/72 inch) is then a little over two dots. */
export const DOTS_PER_INCH = 150

/** Prints a drawing, and copies the print in two greys and in four: by Poppler, which is not ours. */
export async function photocopies(drawing: Drawing): Promise<readonly [twoGreys: Copy, fourGreys: Copy]> {
  const pdf = await renderPdf([drawing], { title: drawing.title, readPart })
  const folder = mkdtempSync(join(tmpdir(), 'marram-copy-'))
  try {
    const path = join(folder, 'page.pdf')
    writeFileSync(path, pdf)
    const bytes = execFileSync('pdftoppm', ['-r', String(DOTS_PER_INCH), '-gray', path], { maxBuffer: 1 << 26 })
    // A portable graymap: "P5", width, height, 255, then a byte a dot (netpbm, pgm).
    const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'))
    if (head === null) throw new Error('no graymap')
    const [width, height] = [Number(head[1]), Number(head[2])]
    const greys = bytes.subarray(head[0].length)
    const copy = (bits: 1 | 2): Copy => ({ width, height, bits, dots: Uint8Array.from(greys, (grey) => grey >> (8 - bits)) })
    return [copy(1), copy(2)]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The share of ink in a dot: 0 = paper, 1 = black. */
export function inkAt({ width, bits, dots }: Copy, x: number, y: number): number {
  return 1 - (dots[y * width + x] ?? 0) / (2 ** bits - 1)
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])

/** A copy as a PNG of grey with as many bits a dot (PNG, third edition: IHDR, IDAT, IEND; every row unfiltered). */
export function encodePng({ width, height, bits, dots }: Copy): Buffer {
  const header = Buffer.alloc(13)
  header.writeUInt32BE(width, 0)
  header.writeUInt32BE(height, 4)
  header[8] = bits
  const row = Math.ceil((width * bits) / 8)
  const packed = Buffer.alloc((row + 1) * height)
  for (const [dot, grey] of dots.entries()) {
    const [x, y] = [dot % width, Math.floor(dot / width)]
    const byte = y * (row + 1) + 1 + ((x * bits) >> 3)
    packed[byte] = (packed[byte] ?? 0) | (grey << (8 - bits - ((x * bits) & 7)))
  }
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(packed, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

/** Reads what `encodePng` wrote, and no other PNG. */
export function decodePng(png: Buffer): Copy {
  const [width, height, bits] = [png.readUInt32BE(16), png.readUInt32BE(20), png[24]]
  if (!png.subarray(0, 8).equals(SIGNATURE) || (bits !== 1 && bits !== 2)) throw new Error('not a copy of ours')
  const length = png.readUInt32BE(33)
  const packed = inflateSync(png.subarray(41, 41 + length))
  const row = Math.ceil((width * bits) / 8)
  const dots = Uint8Array.from({ length: width * height }, (_, dot) => {
    const x = (dot % width) * bits
    const byte = packed[Math.floor(dot / width) * (row + 1) + 1 + (x >> 3)] ?? 0
    return (byte >> (8 - bits - (x & 7))) & (2 ** bits - 1)
  })
  return { width, height, bits, dots }
}

function chunk(type: string, content: Buffer): Buffer {
  const typed = Buffer.concat([Buffer.from(type, 'latin1'), content])
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)]
  length.writeUInt32BE(content.length)
  check.writeUInt32BE(crc32(typed))
  return Buffer.concat([length, typed, check])
}
