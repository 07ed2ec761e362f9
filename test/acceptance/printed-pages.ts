import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

// Pages as a reader and a printer see them, by tools that are not ours: the Poppler utilities.

/** False where the machine lacks them; the one test command's set-up installs them. */
export const canReadPdf: boolean = spawnSync('pdftoppm', ['-v']).error === undefined

/** The words of a PDF in the order in which they stand, one space between. */
export function textOf(pdf: Uint8Array, page?: number): string {
  const pages = page === undefined ? [] : ['-f', String(page), '-l', String(page)]
  return withFile(pdf, (path) => execFileSync('pdftotext', [...pages, path, '-'], { encoding: 'utf8' }))
    .replaceAll(/\s+/g, ' ')
    .trim()
}

/** Each font of a PDF: its name, and whether it is embedded and cut down to the letters used. */
export function fontsOf(
  pdf: Uint8Array,
): { readonly name: string; readonly isEmbedded: boolean; readonly isSubset: boolean }[] {
  const table = withFile(pdf, (path) => execFileSync('pdffonts', [path], { encoding: 'utf8' }))
  return table
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => {
      const [embedded, subset] = line.trim().split(/\s+/).slice(-5)
      return { name: line.split(' ')[0] ?? '', isEmbedded: embedded === 'yes', isSubset: subset === 'yes' }
    })
}

/** How many pages, and the size of the first, points. */
export function sizeOf(pdf: Uint8Array): {
  readonly pages: number
  readonly width: number
  readonly height: number
} {
  const said = withFile(pdf, (path) => execFileSync('pdfinfo', [path], { encoding: 'utf8' }))
  const size = /Page size:\s+([\d.]+) x ([\d.]+)/.exec(said)
  return {
    pages: Number(/Pages:\s+(\d+)/.exec(said)?.[1]),
    width: Number(size?.[1]),
    height: Number(size?.[2]),
  }
}

/** A page as dots of ink: `isDark(x, y)` with the origin at the top left. */
export interface Picture {
  readonly width: number
  readonly height: number
  readonly isDark: (x: number, y: number) => boolean
}

/** One page at so many dots to the inch; a rectangle of it where the whole would be large, in points. */
export function pictureOf(
  pdf: Uint8Array,
  page: number,
  dotsPerInch: number,
  crop?: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
): Picture {
  const dots = (points: number): string => String(Math.round((points * dotsPerInch) / 72))
  const part = crop
    ? ['-x', dots(crop.left), '-y', dots(crop.top), '-W', dots(crop.width), '-H', dots(crop.height)]
    : []
  const bytes = withFile(pdf, (path) =>
    execFileSync(
      'pdftoppm',
      ['-r', String(dotsPerInch), '-gray', '-f', String(page), '-l', String(page), ...part, path],
      { maxBuffer: 1 << 28 },
    ),
  )
  // A portable graymap: "P5", width, height, 255, then a byte a dot (netpbm, pgm).
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString('latin1'))
  if (head === null) throw new Error('no graymap')
  const [width, height, start] = [Number(head[1]), Number(head[2]), head[0].length]
  return { width, height, isDark: (x, y) => (bytes[start + y * width + x] ?? 255) < 128 }
}

function withFile<Result>(pdf: Uint8Array, work: (path: string) => Result): Result {
  const folder = mkdtempSync(join(tmpdir(), 'marram-pdf-'))
  try {
    const path = join(folder, 'pages.pdf')
    writeFileSync(path, pdf)
    return work(path)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The bytes of a file. */
export function bytesOf(path: string): Uint8Array {
  return new Uint8Array(readFileSync(path))
}

/** The longest unbroken stretch of ink along a line of so many dots. */
export function longestRun(count: number, isDark: (at: number) => boolean): number {
  let [longest, run] = [0, 0]
  for (let at = 0; at < count; at += 1) {
    run = isDark(at) ? run + 1 : 0
    longest = Math.max(longest, run)
  }
  return longest
}
