import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'

/** The unit of a column: a length, or degrees for an angle off the line. */
export type ColumnUnit = 'm' | 'yd' | 'ft' | 'deg'

/** What a column of a shot table holds; `unit` is `null` while it is not known. */
export type ColumnMeaning =
  | { readonly what: 'club' | 'lie' | 'strike' | 'planned' }
  | { readonly what: 'date'; readonly order: DateOrder | null }
  /** `isStraight`: measured from ball to ball and not along the intended line. */
  | { readonly what: 'carry' | 'total'; readonly unit: ColumnUnit | null; readonly isStraight: boolean }
  | { readonly what: 'offline'; readonly unit: ColumnUnit | null; readonly isLeftPositive: boolean }

/** Which number of `5/6/2026` is the day. */
export type DateOrder = 'day-first' | 'month-first'

export const METRES_PER: Readonly<Record<Exclude<ColumnUnit, 'deg'>, number>> = {
  m: 1,
  yd: METRES_PER_YARD,
  ft: METRES_PER_FOOT,
}

const UNIT_WORDS: Readonly<Record<string, ColumnUnit>> = {
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  mtr: 'm',
  y: 'yd',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  deg: 'deg',
  degs: 'deg',
  degree: 'deg',
  degrees: 'deg',
  '°': 'deg',
}

/** The unit that a word stands for (`yds`, `[m]`, `(°)`), `null` when it is none. */
export function unitOf(word: string): ColumnUnit | null {
  return UNIT_WORDS[word.replaceAll(/[[\](){}.\s]/g, '').toLowerCase()] ?? null
}

/** A heading as one word: `Carry (yds)` → `carry_yds`. */
export function tidyHeading(heading: string): string {
  return heading
    .replace(/^\uFEFF/, '')
    .trim()
    .toLowerCase()
    .replaceAll(/[[\](){}\s,;:_-]+/g, '_')
    .replaceAll(/^_|_$/g, '')
}

/** A heading's last word where that is a unit, and the words before it: `carry_yds` → `carry`, `yd`. */
export function headingAndUnit(heading: string): {
  readonly words: string
  readonly unit: ColumnUnit | null
} {
  const tidy = tidyHeading(heading)
  const cut = tidy.lastIndexOf('_')
  const unit = cut === -1 ? null : unitOf(tidy.slice(cut + 1))
  return unit === null ? { words: tidy, unit } : { words: tidy.slice(0, cut), unit }
}

/**
 * The meaning of one of our own headings: `date`, `club`, `lie`, `planned`, `strike`, and `carry`, `total` and
 * `offline` with their unit (right positive); `null` for any other.
 */
export function ownMeaning(heading: string): ColumnMeaning | null {
  const { words, unit } = headingAndUnit(heading)
  if (words === 'club' || words === 'lie' || words === 'strike' || words === 'planned') return { what: words }
  if (words === 'date') return { what: 'date', order: null }
  if (unit === 'deg' && words !== 'offline') return null
  if (words === 'carry' || words === 'total') return { what: words, unit, isStraight: false }
  return words === 'offline' ? { what: 'offline', unit, isLeftPositive: false } : null
}
