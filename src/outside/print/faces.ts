import type { Face } from '#paper/draw/drawing.ts'

/** A font file in the parts in which it is published, by the letters they hold; asked in this order. */
const PARTS = ['latin', 'latin-ext', 'cyrillic', 'cyrillic-ext', 'greek', 'greek-ext', 'vietnamese'] as const
/** One part of a face: `sans-bold latin-ext`. */
export type FacePart = `${Face} ${(typeof PARTS)[number]}`

/** Gives the bytes of one part, as WOFF: from a disk or from what was fetched. */
export type ReadPart = (part: FacePart) => Uint8Array

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

/** Where a part lies among the published files: `eb-garamond/files/eb-garamond-latin-400-normal.woff`. */
export function fileOf(part: FacePart): string {
  const [face, letters] = part.split(' ') as [Face, string]
  const [family, style] = FILES[face]
  return `${family}/files/${family}-${letters}-${style}.woff`
}
