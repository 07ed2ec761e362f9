import { renderPdf } from '#outside/print/render-pdf.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import type { Letters } from '#paper/draw/letters.ts'
import { fetchedPart, withFonts } from './fonts.ts'

let letters: Letters | null = null

/** The widths of the printed letters: pages are laid out here as they are for a file. To be used within `withFonts`. */
export function pressLetters(): Letters {
  letters ??= printedLetters(fetchedPart)
  return letters
}

/** Drawings → the bytes of one PDF, worked out in this browser. */
export function printFile(drawings: readonly Drawing[], title: string): Promise<Uint8Array> {
  return withFonts(() => renderPdf(drawings, { title, readPart: fetchedPart }))
}
