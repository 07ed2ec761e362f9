import { Failure } from '#faults/failure.ts'
import { pageName } from '#golf/player/first-name.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import { readPart } from '#outside/print/read-part.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import { recapSheet, type SheetFacts } from '#paper/book/recap-sheet.ts'
import type { Paper } from '#paper/book/settings.ts'
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

/** What a sheet after a round says whatever else is on it. */
export const AFTER_THE_ROUND: string = `Worked out after the round. While a counting round lasts nothing may be worked out from it (Rule ${RULES_2023.devices.clause}, ${RULES_2023.edition}); the Committee's word stands.`

/** Writes a sheet of words and figures as PDF. Throws what writing a file throws. */
export async function writeSheet(
  { path, paper }: { readonly path: string; readonly paper: Paper },
  facts: Omit<SheetFacts, 'letters' | 'paper'>,
): Promise<void> {
  const drawings = recapSheet({ ...facts, paper, letters: printedLetters(readPart) })
  writeBytes(path, await renderPdf(drawings, { title: facts.title, readPart }))
}

/** The heading of a player's sheet; of a minor the first name only. */
export function sheetTitle(course: string, player: { readonly name: string; readonly age?: number }): string {
  return `${course}, ${pageName(player.name, player.age)}`
}
