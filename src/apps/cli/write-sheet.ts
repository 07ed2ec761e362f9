import { Failure } from '#faults/failure.ts'
import { readPart } from '#outside/print/read-part.ts'
import { recapSheet } from '#paper/book/recap-sheet.ts'
import type { Paper } from '#paper/book/settings.ts'
import type { SheetWords } from '#paper/book/sheet-words.ts'
import { requireFolder, writeBytes } from './write-file.ts'

/** Where a sheet is to be written and on what paper, checked before long work; `null` = nowhere. Throws MAR-FILE-006 and MAR-USAGE-002. */
export function askedSheet({
  out,
  paper = 'a4',
}: {
  readonly out?: string
  readonly paper?: string
}): { readonly path: string; readonly paper: Paper } | null {
  if (paper !== 'a4' && paper !== 'letter')
    throw new Failure('MAR-USAGE-002', `"${paper}" is no paper here. Write a4 or letter.`, '--paper')
  if (out === undefined) return null
  requireFolder(out)
  return { path: out, paper }
}

/** Writes a sheet of words and figures as PDF. Throws what writing a file throws. */
export async function writeSheet(
  { path, paper }: { readonly path: string; readonly paper: Paper },
  facts: SheetWords,
): Promise<void> {
  // Loaded only where there is something to print: most runs print nothing.
  const { renderPdf } = await import('#outside/print/render-pdf.ts')
  const { printedLetters } = await import('#outside/print/type-setter.ts')
  const drawings = recapSheet({ ...facts, paper, letters: printedLetters(readPart) })
  writeBytes(path, await renderPdf(drawings, { title: facts.title, readPart }))
}
