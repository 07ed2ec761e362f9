import PDFDocument from 'pdfkit'
import type { Face } from '#paper/draw/drawing.ts'
import type { Letters } from '#paper/draw/letters.ts'
import { type FacePart, partsOf, type ReadPart } from './faces.ts'

/** A stretch of a line whose letters all come from one part of its face. */
export interface Run {
  readonly part: FacePart
  readonly text: string
}

/** What of an embedded font is asked here; the library's own types leave it out. */
interface EmbeddedFont {
  readonly font: { hasGlyphForCodePoint(code: number): boolean }
  widthOfString(text: string, size: number): number
}

/** Sets lines of text in a document: which part of a face holds each letter, and how wide a line stands. */
export interface TypeSetter {
  readonly runsOf: (text: string, face: Face) => Run[]
  readonly letters: Letters
  /** Letters that no part of a face holds, each once. */
  readonly lacking: (text: string, face: Face) => string[]
}

/**
 * The type of one document. Parts are read when a letter first needs them; a letter that none holds is set as a question
 * mark, so that a reader sees that something stood there.
 */
export function typeSetter(document: PDFKit.PDFDocument, readPart: ReadPart): TypeSetter {
  const fonts = new Map<FacePart, EmbeddedFont>()
  const fontOf = (part: FacePart): EmbeddedFont => {
    const known = fonts.get(part)
    if (known) return known
    document.registerFont(part, readPart(part) as Buffer)
    document.font(part)
    const font = (document as unknown as { readonly _font: EmbeddedFont })._font
    fonts.set(part, font)
    return font
  }
  const partFor = (letter: string, face: Face): FacePart | null =>
    partsOf(face).find((part) => fontOf(part).font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)) ?? null

  function runsOf(text: string, face: Face): Run[] {
    const runs: { part: FacePart; text: string }[] = []
    for (const letter of text.normalize('NFC').replaceAll(CONTROLS, ' ')) {
      const part = partFor(letter, face)
      const set = part === null ? '?' : letter
      const last = runs.at(-1)
      const here = part ?? last?.part ?? `${face} latin`
      if (last?.part === here) last.text += set
      else runs.push({ part: here, text: set })
    }
    return runs
  }
  return {
    runsOf,
    lacking: (text, face) => [
      ...new Set(
        [...text.normalize('NFC').replaceAll(CONTROLS, ' ')].filter(
          (letter) => partFor(letter, face) === null,
        ),
      ),
    ],
    letters: (text, face, size) =>
      runsOf(text, face).reduce((sum, run) => sum + fontOf(run.part).widthOfString(run.text, size), 0),
  }
}

/** The widths of the printed faces, for laying pages out before there is a document. */
export function printedLetters(readPart: ReadPart): Letters {
  return loose(readPart).letters
}

/** Letters of a text that the printed type does not have, each once; a page shows a question mark for each. */
export function lackingLetters(text: string, readPart: ReadPart): string[] {
  return loose(readPart).lacking(text, 'sans')
}

/** Type of no document. */
function loose(readPart: ReadPart): TypeSetter {
  return typeSetter(new PDFDocument({ autoFirstPage: false, font: NO_FONT }), readPart)
}

/** None to begin with: every letter is set in a face of ours, and a browser has no other. */
export const NO_FONT = ''

// biome-ignore lint/suspicious/noControlCharactersInRegex: a name from a file may hold them, and no page shows them.
const CONTROLS = /[\u0000-\u001f\u007f]/g
