import type { SentenceReader } from '#golf/player/own-sentence.ts'
import type { Drawing } from '../draw/drawing.ts'
import type { BookFacts, RoundFacts } from './book-facts.ts'
import { bookPages } from './book-pages.ts'
import { CARD_KINDS } from './card-kinds.ts'
import { cardPages } from './card-pages.ts'
import { imposeBook } from './impose.ts'
import { logSheets } from './log-sheet.ts'
import type { Page, PrintedSheet } from './page.ts'
import { pinSheets } from './pin-sheet.ts'
import type { Paper } from './settings.ts'

/** What can be printed of a round. */
export const PRINTED_KINDS = ['card', 'large', 'junior', 'caddie', 'book', 'pins', 'log'] as const
export type PrintedKind = (typeof PRINTED_KINDS)[number]

/** Sheets that are the same for every player: where the holes are cut, and a line a hole to write a round down on. */
type SheetKind = 'pins' | 'log'

/** Whether it is the same for every player, so that nobody has to be named. */
export function isForAll(kind: PrintedKind): kind is SheetKind {
  return kind === 'pins' || kind === 'log'
}

/** Lays out a sheet that is the same for every player. Greens stand at 1 to `greenScale`, or smaller where they do not fit. */
export function printedSheets(kind: SheetKind, facts: RoundFacts, greenScale: number): Page[] {
  return kind === 'pins' ? pinSheets(facts, greenScale) : logSheets(facts)
}

/** Whether plans stand on it; of what has none nothing is worked out. */
export function hasPlans(kind: PrintedKind): boolean {
  return kind === 'book' || (!isForAll(kind) && CARD_KINDS[kind].hasPlans)
}

/** Whose sentences stand on it; `null` = none do. */
export function readerOf(kind: PrintedKind): SentenceReader | null {
  return kind === 'book' ? 'player' : isForAll(kind) ? null : CARD_KINDS[kind].reader
}

/** Whether it is words alone. */
export function isWords(kind: PrintedKind): boolean {
  return kind !== 'book' && kind !== 'pins'
}

/** Lays out the pages of one player. Greens of a book stand at 1 to `greenScale`, or smaller where they do not fit. */
export function printedPages(
  kind: Exclude<PrintedKind, SheetKind>,
  facts: BookFacts,
  greenScale: number,
): Page[] {
  return kind === 'book' ? bookPages(facts, greenScale) : cardPages(facts, CARD_KINDS[kind])
}

/** The sheets that come out of the printer: a pocket book stands two pages to a sheet, with `hasFolds` to be folded and stapled. */
export function imposedSheets(
  kind: PrintedKind,
  pages: readonly Page[],
  { paper, hasFolds }: { readonly paper: Paper; readonly hasFolds: boolean },
): PrintedSheet[] {
  if (kind === 'book') return imposeBook(pages, paper, hasFolds)
  return pages.map(({ drawing, rows = [] }) => ({ drawing, rows }))
}

/** The sheets of several players, one after the other: each begins a sheet of paper, for printers that use both sides. */
export function sheetsOfField(field: readonly (readonly PrintedSheet[])[]): Drawing[] {
  return field.flatMap((printed) => {
    const sheets = printed.map(({ drawing }) => drawing)
    const [first] = sheets
    if (field.length < 2 || first === undefined || sheets.length % 2 === 0) return sheets
    return [...sheets, { ...first, title: 'Blank', description: 'Left blank.', shapes: [] }]
  })
}
