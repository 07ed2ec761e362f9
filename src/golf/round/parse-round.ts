import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { addHole } from './add-hole.ts'
import { type FieldsOf, fieldsOf } from './fields-of.ts'
import { logClub } from './log-club.ts'
import type { ReadRound } from './parse-log.ts'
import { type Finish, isFinishLetter, type RoundHole, type RoundStroke } from './round.ts'
import { LONGEST_LEFT_METRES, MOST_COUNTED } from './settings.ts'

const LONGEST = { from: -LONGEST_LEFT_METRES, to: LONGEST_LEFT_METRES, unit: 'm' }
const LEFT = { from: 0, to: LONGEST_LEFT_METRES, unit: 'm' }
const COUNT = { from: 0, to: MOST_COUNTED, unit: 'strokes', isWhole: true }

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
  'closed',
  'log',
] as const

/**
 * A round from the text of a `round/1` file. Every fault is told with its field, and what it touches is left open; all
 * else is kept. Throws MAR-ROUND-001, 002 and 008 when there is nothing to keep.
 */
export function parseRound(text: string, where: string): ReadRound {
  const faults: Fault[] = []
  const file = fieldsOf(roundObject(text, where), '', faults)
  if (file.text('schema') !== 'round/1')
    throw new Failure('MAR-ROUND-002', 'A round file must say "schema": "round/1".', `${where}: schema`)
  file.allowOnly(...ROUND_FIELDS)
  const holes: RoundHole[] = []
  for (const fields of file.list('holes')) {
    const hole = readHole(fields)
    if (hole === null) continue
    addHole(holes, hole, faults, { source: 'round', advice: 'Take out one of the two, or mend its ref.' })
  }
  if (holes.length === 0)
    throw new Failure('MAR-ROUND-008', 'The round has no hole that can be read.', `${where}: holes`)
  return {
    round: { date: file.text('date'), tee: file.text('tee'), format: file.text('format'), holes },
    id: file.text('id'),
    course: file.text('course'),
    faults,
  }
}

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

function readHole(hole: FieldsOf): RoundHole | null {
  hole.allowOnly('ref', 'strokes', 'putts', 'firstPutt_m', 'pickedUp')
  const ref = hole.text('ref')
  if (ref === null) {
    hole.missing('ref')
    return null
  }
  return {
    ref,
    strokes: hole.list('strokes').map(readStroke),
    putts: hole.number('putts', COUNT) ?? 0,
    firstPuttMetres: hole.number('firstPutt_m', LEFT),
    isPickedUp: hole.truth('pickedUp'),
    place: hole.path,
  }
}

function readStroke(stroke: FieldsOf): RoundStroke {
  stroke.allowOnly('club', 'aim_offset_m', 'from', 'to', 'lie', 'penalty', 'asPlanned')
  const club = stroke.text('club')
  const name = club === null ? null : logClub(club)
  if (club !== null && name === null)
    stroke.say(
      'MAR-ROUND-010',
      'club',
      `is "${club}", which is no club.`,
      'Write it like 5-wood, 7-iron, sand-wedge or putter.',
    )
  return {
    club: name,
    aimOffsetMetres: stroke.number('aim_offset_m', LONGEST),
    from: stroke.lie('from'),
    finish: readFinish(stroke.object('to')),
    lie: stroke.lie('lie'),
    penalty: stroke.number('penalty', COUNT),
    isAsPlanned: stroke.truth('asPlanned'),
    place: stroke.path,
  }
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
