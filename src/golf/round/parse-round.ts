import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { addHole } from './add-hole.ts'
import { dayParts } from './calendar.ts'
import { type FieldsOf, fieldsOf } from './fields-of.ts'
import { logClub } from './log-club.ts'
import type { ReadRound } from './parse-log.ts'
import { type PlanNumbers, parsePlanNumbers } from './plan-numbers.ts'
import { planNumbersIn } from './plan-numbers-file.ts'
import type { RoundHole, RoundStroke } from './round.ts'
import { LEFT, LONGEST, ROUND_FIELDS, readFinish, roundObject } from './round-fields.ts'
import { MOST_COUNTED } from './settings.ts'

const COUNT = { from: 0, to: MOST_COUNTED, unit: 'strokes', isWhole: true }

/**
 * A round from the text of a `round/1` file. Every fault is told with its field, and what it touches is left open; all
 * else is kept. Throws MAR-ROUND-001, 002 and 008 when there is nothing to keep.
 */
export function parseRound(text: string, where: string): ReadRound {
  const faults: Fault[] = []
  const object = roundObject(text, where)
  const file = fieldsOf(object, '', faults)
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
    round: { date: readDate(file), tee: file.text('tee'), format: file.text('format'), holes },
    id: file.text('id'),
    course: file.text('course'),
    planNumbers: readPlanNumbers(object, faults),
    faults,
  }
}

/** Numbers that cannot be read are told, and the round is held against others. */
function readPlanNumbers(file: object, faults: Fault[]): PlanNumbers | null {
  const found = planNumbersIn(file)
  try {
    if (found !== null) return parsePlanNumbers(found, 'plan_numbers')
    if ((file as { readonly plan_numbers?: unknown }).plan_numbers == null) return null
    throw new Failure('MAR-ROUND-016', 'They are not an object in braces.', 'plan_numbers')
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    faults.push({
      severity: 'warning',
      code: 'MAR-ROUND-016',
      message: `The numbers of the plan of that day cannot be read: ${error.message}`,
      place: error.where,
      advice: 'Mend them, or take plan_numbers out: the round is held against the numbers that are given.',
    })
    return null
  }
}

function readDate(file: FieldsOf): string | null {
  const date = file.text('date')
  if (date === null || dayParts(date) !== null) return date
  file.say('MAR-ROUND-004', 'date', `is "${date}", which is no date.`, 'Write it like 2026-05-02.')
  return null
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
