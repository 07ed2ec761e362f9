import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Face } from '#paper/draw/drawing.ts'

const require = createRequire(import.meta.url)

/** A font file in the parts in which it is published, by the letters they hold; asked in this order. */
const PARTS = ['latin', 'latin-ext', 'cyrillic', 'cyrillic-ext', 'greek', 'greek-ext', 'vietnamese'] as const
/** One part of a face: `sans-bold`, `latin-ext`. */
export type FacePart = `${Face} ${(typeof PARTS)[number]}`

const FILES: Readonly<Record<Face, readonly [family: string, style: string]>> = {
  serif: ['eb-garamond', '400-normal'],
  'serif-italic': ['eb-garamond', '400-italic'],
  'serif-bold': ['eb-garamond', '600-normal'],
  sans: ['source-sans-3', '400-normal'],
  'sans-bold': ['source-sans-3', '700-normal'],
}

/** The parts of a face in the order in which a letter is looked for. */
export function partsOf(face: Face): FacePart[] {
  return PARTS.map((part): FacePart => `${face} ${part}`)
}

/** The bytes of one part, as WOFF: the packages of both families lie beside Marram's own files. */
export function readPart(part: FacePart): Buffer {
  const [face, letters] = part.split(' ') as [Face, string]
  const [family, style] = FILES[face]
  return readFileSync(require.resolve(`@fontsource/${family}/files/${family}-${letters}-${style}.woff`))
}
