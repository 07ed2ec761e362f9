import { isWords, PRINTED_KINDS, type PrintedKind } from '#paper/book/printed-kinds.ts'
import type { Paper } from '#paper/book/settings.ts'
import type { Purpose } from '#paper/book/stroke-words.ts'
import { ownStorage } from '../documents/own-storage.ts'

/** What is printed, and how. */
export interface CardChoice {
  readonly kind: PrintedKind
  readonly purpose: Purpose
  readonly paper: Paper
  /** Never a picture, whatever kind is chosen. */
  readonly isTextOnly: boolean
  /** Marks where the sheet is folded; of a pocket book: to be stapled. */
  readonly hasFolds: boolean
  /** Plans by quick settings. */
  readonly isQuick: boolean
}

/** The kinds by the words that people choose them by. */
export const KIND_NAMES: Readonly<Record<PrintedKind, string>> = {
  card: 'card',
  large: 'card, large print',
  junior: 'card for a junior',
  caddie: 'card for a caddie',
  book: 'pocket book',
  pins: 'pin sheet',
  log: 'sheet for the log',
}

const FIRST: CardChoice = {
  kind: 'card',
  purpose: 'practice',
  paper: 'a4',
  isTextOnly: false,
  hasFolds: true,
  isQuick: false,
}

/** What is printed once the switch for words alone is heeded. */
export function kindOf({ kind, isTextOnly }: CardChoice): PrintedKind {
  return isTextOnly && !isWords(kind) ? 'card' : kind
}

const KEPT = 'marram.card'

/** As it was chosen last in this browser. */
export function keptChoice(): CardChoice {
  try {
    const kept = JSON.parse(ownStorage.getItem(KEPT) ?? '{}') as Partial<CardChoice>
    const isKind = PRINTED_KINDS.some((kind) => kind === kept.kind)
    return { ...FIRST, ...kept, kind: isKind && kept.kind !== undefined ? kept.kind : FIRST.kind }
  } catch {
    return FIRST
  }
}

export function keepChoice(choice: CardChoice): void {
  try {
    ownStorage.setItem(KEPT, JSON.stringify(choice))
  } catch {
    // It holds until the page goes.
  }
}
