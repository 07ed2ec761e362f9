import type { Finish } from './round.ts'
import { sortedText } from './sorted-text.ts'

/**
 * A round while it is written down, on one phone or on several: each entry is the last word on one thing, and nothing is
 * ever taken out. Two logs of a round are laid together by taking the later word of each, in whatever order and however
 * often, so nothing is lost and nothing stands twice.
 */
export type RoundLog = ReadonlyMap<string, LogEntry>

/** One word on one thing. */
export interface LogEntry {
  readonly word: LogWord
  /** One more than any word that was known when it was said. */
  readonly count: number
  /** The phone that said it. */
  readonly by: string
}

/** What can be said of a round. */
export type LogWord =
  /** `null` = taken back. */
  | { readonly kind: 'stroke'; readonly id: string; readonly stroke: LoggedStroke | null }
  | { readonly kind: 'putts'; readonly hole: string; readonly putts: number | null }
  | { readonly kind: 'first putt'; readonly hole: string; readonly metres: number | null }
  | { readonly kind: 'picked up'; readonly hole: string; readonly isSo: boolean }
  | { readonly kind: 'skipped'; readonly hole: string; readonly isSo: boolean }
  /** A round that was closed stays closed. */
  | { readonly kind: 'closed' }

/** One stroke as it was tapped. */
export interface LoggedStroke {
  readonly hole: string
  /** Its place among the strokes of the hole; a stroke put in between has one between. */
  readonly order: number
  /** As in the player file, or `putter`. */
  readonly club: string | null
  readonly finish: Finish | null
  /** `null` = what the letter of the finish says. */
  readonly penalty: number | null
  readonly isAsPlanned: boolean
}

export const EMPTY_LOG: RoundLog = new Map()

/** The log with words said on it by a phone, later than everything known. */
export function withWords(log: RoundLog, by: string, words: readonly LogWord[]): RoundLog {
  const count = nextCount(log)
  const said = new Map(log)
  for (const word of words) said.set(thingOf(word), { word, count, by })
  return said
}

/** The count that the next word gets. */
export function nextCount(log: RoundLog): number {
  let most = 0
  for (const { count } of log.values()) most = Math.max(most, count)
  return most + 1
}

/** Two logs of one round laid together. */
export function mergeLogs(one: RoundLog, other: RoundLog): RoundLog {
  const merged = new Map(one)
  for (const [thing, entry] of other) {
    const known = merged.get(thing)
    if (known === undefined || isLater(entry, known)) merged.set(thing, entry)
  }
  return merged
}

/** Whether two logs say the same. */
export function isSameLog(one: RoundLog, other: RoundLog): boolean {
  if (one.size !== other.size) return false
  return [...one].every(([thing, entry]) => {
    const found = other.get(thing)
    return found !== undefined && !isLater(entry, found) && !isLater(found, entry)
  })
}

/** What a word is about; of two words about one thing the later one counts. */
export function thingOf(word: LogWord): string {
  if (word.kind === 'stroke') return `stroke ${word.id}`
  return word.kind === 'closed' ? 'closed' : `${word.kind} ${word.hole}`
}

/** The same everywhere, for words of one count too. */
function isLater(one: LogEntry, other: LogEntry): boolean {
  if (one.count !== other.count) return one.count > other.count
  if (one.by !== other.by) return one.by > other.by
  return sortedText(one.word) > sortedText(other.word)
}
