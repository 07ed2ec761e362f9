import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'
import type { SurveyFeature } from '../survey-feature.ts'
import { placeOf, type Tally } from './tally.ts'

const METRES_PER_UNIT: Readonly<Record<string, number>> = {
  '': 1,
  m: 1,
  metre: 1,
  metres: 1,
  meter: 1,
  meters: 1,
  yd: METRES_PER_YARD,
  yds: METRES_PER_YARD,
  yard: METRES_PER_YARD,
  yards: METRES_PER_YARD,
  ft: METRES_PER_FOOT,
  "'": METRES_PER_FOOT,
  feet: METRES_PER_FOOT,
}

/** A length such as `412`, `412 m`, `450 yd` or `12 ft` in metres; metres unless a unit is written. `null` when it is none of these. */
export function readLengthMetres(text: string): number | null {
  const match = /^\s*([+-]?\d+(?:\.\d+)?)\s*([a-z']*)\s*\.?$/i.exec(text)
  const perUnit = match && METRES_PER_UNIT[match[2]?.toLowerCase() ?? '']
  return match && perUnit !== undefined && perUnit !== null ? Number(match[1]) * perUnit : null
}

/** The refs in a tag value: `1;10` → `['1', '10']`. Empty when there is none. */
export function readRefs(text: string | undefined): string[] {
  return (text ?? '')
    .split(/[;,]/)
    .map((ref) => ref.trim())
    .filter((ref) => ref !== '')
}

/**
 * A number in a tag, or `null` when the tag is absent or its value is no number from `least` to `most`; the latter
 * is a fault.
 */
export function readNumberTag(
  feature: SurveyFeature,
  key: string,
  least: number,
  most: number,
  tally: Tally,
): number | null {
  const text = feature.tags[key]
  if (text === undefined || text.trim() === '') return null
  const value = Number(text)
  if (Number.isFinite(value) && value >= least && value <= most) return value
  tally.fault(
    'warning',
    'MAR-IMPORT-011',
    placeOf(feature),
    `“${key}” is “${text}”, which is not a number from ${least} to ${most}; it is left out.`,
    `Correct “${key}” in the source.`,
  )
  return null
}

/** A length in a tag in metres, or `null` when the tag is absent or cannot be read; the latter is a fault. */
export function readLengthTag(feature: SurveyFeature, key: string, tally: Tally): number | null {
  const text = feature.tags[key]
  if (text === undefined || text.trim() === '') return null
  const metres = readLengthMetres(text)
  if (metres !== null && metres > 0) return metres
  tally.fault(
    'warning',
    'MAR-IMPORT-011',
    placeOf(feature),
    `“${key}” is “${text}”, which is not a length in metres, yards or feet; it is left out.`,
    `Write it as “380”, “380 m” or “415 yd”.`,
  )
  return null
}
