import { Failure } from '#faults/failure.ts'
import { nearestWord } from '#faults/nearest-word.ts'
import { PRACTICE_PARTS, type PracticePart } from './improved-player.ts'
import type { PracticeRates } from './practice.ts'
import { MOST_PRACTICE_RATE, PRACTICE_RATES } from './settings.ts'

/** The professional's own: how fast practice helps, and what to do. Marram invents no technique. */
export interface PracticeNotes {
  readonly rates: PracticeRates
  readonly drills: Readonly<Partial<Record<PracticePart, string>>>
}

/** Without a file: our rates, and no drills. */
export const NO_PRACTICE_NOTES: PracticeNotes = { rates: PRACTICE_RATES, drills: {} }

/**
 * Reads a `practice/1` file: `{"schema": "practice/1", "rates": {"putting-pace": 0.02}, "drills": {"putting-pace": "…"}}`; a
 * rate is the share by which an hour makes a part better. Throws MAR-PRACTICE-001 and -002.
 */
export function parsePracticeNotes(text: string, where: string): PracticeNotes {
  const file = objectOf(jsonOf(text, where), where)
  if (file.schema !== 'practice/1')
    throw new Failure('MAR-PRACTICE-001', 'The file does not say "schema": "practice/1".', `${where}: schema`)
  for (const name of Object.keys(file))
    if (!['schema', 'rates', 'drills'].includes(name))
      throw new Failure('MAR-PRACTICE-002', `${name} is none of: rates, drills.`, `${where}: ${name}`)
  const rates: Record<PracticePart, number> = { ...PRACTICE_RATES }
  for (const [part, rate] of partsOf(file.rates, `${where}: rates`)) {
    if (typeof rate !== 'number' || !(rate >= 0 && rate <= MOST_PRACTICE_RATE))
      throw new Failure(
        'MAR-PRACTICE-002',
        `${JSON.stringify(rate)} is no share by which an hour makes it better, from 0 to ${MOST_PRACTICE_RATE}.`,
        `${where}: rates.${part}`,
      )
    rates[part] = rate
  }
  const drills: Partial<Record<PracticePart, string>> = {}
  for (const [part, words] of partsOf(file.drills, `${where}: drills`)) {
    if (typeof words !== 'string')
      throw new Failure('MAR-PRACTICE-002', 'A drill is a text.', `${where}: drills.${part}`)
    drills[part] = words.trim()
  }
  return { rates, drills }
}

/** Notes as a `practice/1` file: rates that are ours and empty drills are left out. */
export function encodePracticeNotes({ rates, drills }: PracticeNotes): string {
  const own = <Value>(
    of: Readonly<Partial<Record<PracticePart, Value>>>,
    isOwn: (part: PracticePart) => boolean,
  ) => Object.fromEntries(PRACTICE_PARTS.filter(isOwn).map((part) => [part, of[part]]))
  return `${JSON.stringify(
    {
      schema: 'practice/1',
      rates: own(rates, (part) => rates[part] !== PRACTICE_RATES[part]),
      drills: own(drills, (part) => (drills[part] ?? '').trim() !== ''),
    },
    null,
    1,
  )}\n`
}

function partsOf(value: unknown, where: string): (readonly [PracticePart, unknown])[] {
  if (value === undefined || value === null) return []
  return Object.entries(objectOf(value, where)).map(([name, one]) => {
    const part = PRACTICE_PARTS.find((known) => known === name)
    if (part !== undefined) return [part, one] as const
    const meant = nearestWord(name, PRACTICE_PARTS)
    throw new Failure(
      'MAR-PRACTICE-002',
      `${name} is no part of the game here. ${meant ? `Did you mean ${meant}?` : `These are: ${PRACTICE_PARTS.join(', ')}.`}`,
      `${where}.${name}`,
    )
  })
}

function objectOf(value: unknown, where: string): Readonly<Record<string, unknown>> {
  if (typeof value === 'object' && value !== null && !Array.isArray(value))
    return value as Readonly<Record<string, unknown>>
  throw new Failure('MAR-PRACTICE-001', 'This is not one object in braces.', where)
}

function jsonOf(text: string, where: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-PRACTICE-001', `The practice file is not JSON: ${reason}.`, where)
  }
}
