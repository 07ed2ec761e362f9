import type { Lie } from '#golf/player/player.ts'
import type { DateOrder } from './column-meaning.ts'
import { type ColumnUnit, unitOf } from './column-meaning.ts'

/** A number with what its cell says of itself: a unit, and the side as a letter. */
export interface CellNumber {
  readonly value: number
  readonly unit: ColumnUnit | null
  readonly side: 'left' | 'right' | null
}

/** Words for a cell that says nothing. */
const NOTHING = /^(?:|[-–—?.]+|n\/?a|nan|null|none|nil|unknown|#n\/a)$/i

/** Whether a cell says nothing. */
export function isNothing(text: string): boolean {
  return NOTHING.test(text)
}

const NUMBER =
  /^(?:(l|r|left|right)\s*)?([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*([a-z°'[\]()]*?)\s*(?:(l|r|left|right)\.?)?$/i

/**
 * A cell as a number: a comma can only be for decimals, because no ball goes a thousand; `12 L` and `R 5` say their
 * side, `150 yd` its unit. `null` when it is none.
 */
export function parseNumber(text: string): CellNumber | null {
  const found = NUMBER.exec(text.replace(/^[−–]/, '-'))
  if (found === null) return null
  const [, before, digits = '', word = '', after] = found
  const unit = word === '' ? null : unitOf(word)
  if (word !== '' && unit === null) return null
  if (before !== undefined && after !== undefined) return null
  const letter = (before ?? after)?.charAt(0).toLowerCase()
  if (letter !== undefined && /^[+-]/.test(digits)) return null
  return {
    value: Number(digits.replace(',', '.')),
    unit,
    side: letter === undefined ? null : letter === 'l' ? 'left' : 'right',
  }
}

/** A date: told, or with its day and month in an order that the cell leaves open. */
export type CellDate =
  | { readonly iso: string }
  | { readonly first: number; readonly second: number; readonly year: number }

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec']

/**
 * The day of a cell, a time of day after it passed over: `2026-05-02`, `02.05.2026` (day first), `2 May 2026`,
 * `May 2, 2026`; `5/2/2026` is open. `null` when it is no day of a calendar.
 */
export function parseDate(text: string): CellDate | null {
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T\s].*)?$/.exec(text)
  if (iso !== null) return dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]))
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4}|\d{2})(?:[,\s].*)?$/.exec(text)
  if (dotted !== null) return dayOf(fullYear(dotted[3]), Number(dotted[2]), Number(dotted[1]))
  const open = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4}|\d{2})(?:[,\s].*)?$/.exec(text)
  if (open !== null) return { first: Number(open[1]), second: Number(open[2]), year: fullYear(open[3]) }
  const named =
    /^(\d{1,2})[\s.-]+([a-z]{3})[a-z]*[\s.,-]+(\d{4}|\d{2})(?:[,\s].*)?$/i.exec(text) ??
    swapped(/^([a-z]{3})[a-z]*[\s.]+(\d{1,2})(?:st|nd|rd|th)?[\s,]+(\d{4})(?:[,\s].*)?$/i.exec(text))
  if (named === null) return null
  return dayOf(fullYear(named[3]), MONTHS.indexOf((named[2] ?? '').toLowerCase()) + 1, Number(named[1]))
}

/** The day of a date that was left open, once the order is known; `null` when it is no day of a calendar. */
export function settleDate(
  { first, second, year }: { readonly first: number; readonly second: number; readonly year: number },
  order: DateOrder,
): string | null {
  const day = order === 'day-first' ? dayOf(year, second, first) : dayOf(year, first, second)
  return day?.iso ?? null
}

function swapped(found: RegExpExecArray | null): readonly (string | undefined)[] | null {
  return found === null ? null : [found[0], found[2], found[1], found[3]]
}

function fullYear(text = ''): number {
  return text.length === 2 ? 2000 + Number(text) : Number(text)
}

function dayOf(year: number, month: number, day: number): { readonly iso: string } | null {
  const date = new Date(Date.UTC(year, month - 1, day))
  const isDay = year >= 1900 && date.getUTCMonth() === month - 1 && date.getUTCDate() === day && month > 0
  return isDay ? { iso: date.toISOString().slice(0, 10) } : null
}

/** Words for lies beside their own names. A mat lies like a fairway (our assumption). */
const LIE_WORDS: Readonly<Record<string, Lie>> = {
  tee: 'tee',
  'teeing ground': 'tee',
  'tee box': 'tee',
  fairway: 'fairway',
  mat: 'fairway',
  grass: 'fairway',
  range: 'fairway',
  'first cut': 'first-cut',
  semi: 'first-cut',
  'semi rough': 'first-cut',
  'light rough': 'first-cut',
  rough: 'rough',
  heavy: 'heavy',
  'heavy rough': 'heavy',
  'deep rough': 'heavy',
  bunker: 'bunker',
  sand: 'bunker',
  fringe: 'fringe',
  apron: 'fringe',
  green: 'green',
  trees: 'trees',
  wood: 'trees',
  woods: 'trees',
  scrub: 'scrub',
}

/** The lie that a word names, in our spelling or a common one; `null` for any other word. */
export function parseLieWord(text: string): Lie | null {
  const words = text
    .toLowerCase()
    .replace(/:.*$/, '')
    .replaceAll(/[\s_-]+/g, ' ')
    .trim()
  return LIE_WORDS[words] ?? null
}

const GOOD = /^(?:good|ok|solid|clean|pure|flush|centre|center|middle)$/i
const MISHIT =
  /^(?:mishit|mis-hit|miss|bad|poor|fat|heavy|thin|top|topped|duff|duffed|chunk|shank|sky|skied)$/i

/** How a shot was struck by a word of the trade; `null` for any other word. */
export function parseStrike(text: string): 'good' | 'mishit' | null {
  if (GOOD.test(text)) return 'good'
  return MISHIT.test(text) ? 'mishit' : null
}

/** Whether `planned` says that the shot was meant to be less than a full one, and so says nothing about the full one. */
export function isPartial(text: string): boolean {
  return /\b(?:half|three.quarters?|3\/4|1\/2|¾|½|quarter|punch|knock.?down|chip|chip.?out|pitch|lob|putt|lay.?up)\b|[¾½]/i.test(
    text,
  )
}
