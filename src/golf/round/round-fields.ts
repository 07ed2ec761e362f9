import { Failure } from '#faults/failure.ts'
import type { FieldsOf, NumberRange } from './fields-of.ts'
import { type Finish, isFinishLetter } from './round.ts'
import { LONGEST_LEFT_METRES } from './settings.ts'

/** How far a place or an aim of a round may lie to any side, and how much may be left. */
export const LONGEST: NumberRange = { from: -LONGEST_LEFT_METRES, to: LONGEST_LEFT_METRES, unit: 'm' }
export const LEFT: NumberRange = { from: 0, to: LONGEST_LEFT_METRES, unit: 'm' }

/** What stands in a `round/1` file; what follows `holes` is there for a round that was written down by taps. */
export const ROUND_FIELDS = [
  'schema',
  'date',
  'tee',
  'format',
  'course',
  'player',
  'holes',
  'id',
  'course_id',
  'player_id',
  'purpose',
  'devices',
  'text_only',
  'clubs',
  'card',
  'plan_numbers',
  'closed',
  'log',
] as const

/** The one object of a round file. Throws MAR-ROUND-001. */
export function roundObject(text: string, where: string): object {
  let json: unknown
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-ROUND-001', `The round file is not JSON: ${reason}.`, where)
  }
  if (typeof json === 'object' && json !== null && !Array.isArray(json)) return json
  throw new Failure('MAR-ROUND-001', 'The round file is not one object in braces.', where)
}

/** A place or a letter, `null` where it cannot be read. */
export function readFinish(to: FieldsOf | null): Finish | null {
  if (to === null) return null
  to.allowOnly('x_m', 'y_m', 'letter', 'left_m')
  const letter = to.text('letter')?.toLowerCase() ?? null
  if (letter !== null) {
    if (isFinishLetter(letter)) return { letter, leftMetres: to.number('left_m', LEFT) }
    to.say(
      'MAR-ROUND-004',
      'letter',
      `is "${letter}", which is no letter of a finish.`,
      'The letters are f, c, r, h, b, p, o, g and x.',
    )
    return null
  }
  const [x, y] = [to.number('x_m', LONGEST), to.number('y_m', LONGEST)]
  if (x !== null && y !== null) return { x, y }
  if (x !== null || y !== null) to.missing(x === null ? 'x_m' : 'y_m')
  return null
}
