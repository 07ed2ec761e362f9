import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { type FieldsOf, fieldsOf } from './fields-of.ts'
import type { CardHole, KeptRound, RoundFacts } from './kept-round.ts'
import { logClub } from './log-club.ts'
import { planNumbersIn } from './plan-numbers-file.ts'
import { LEFT, ROUND_FIELDS, readFinish, roundObject } from './round-fields.ts'
import { type LogEntry, type LogWord, type RoundLog, thingOf } from './round-log.ts'
import { MOST_COUNTED } from './settings.ts'

/** A round that goes on being written down, and what was wrong with its file. */
export interface ReadKeptRound {
  readonly round: KeptRound
  readonly faults: readonly Fault[]
}

const COUNT = { from: 0, to: MOST_COUNTED, unit: 'strokes', isWhole: true }
const ANY = { from: 0, to: Number.MAX_SAFE_INTEGER, unit: 'words' }

/**
 * A round with its log from the text of a `round/1` file, a round that has not begun included. What is wrong is told and left
 * out. `null` for a file without a log, as a person writes it: it cannot be merged with another. Throws MAR-ROUND-001 and 002.
 */
export function parseKeptRound(text: string, where: string): ReadKeptRound | null {
  const faults: Fault[] = []
  const object = roundObject(text, where)
  const file = fieldsOf(object, '', faults)
  if (file.text('schema') !== 'round/1')
    throw new Failure('MAR-ROUND-002', 'A round file must say "schema": "round/1".', `${where}: schema`)
  file.allowOnly(...ROUND_FIELDS)
  const id = file.text('id')
  if (id === null || !file.has('log')) return null
  const log = new Map<string, LogEntry>()
  for (const fields of file.list('log')) {
    const entry = readEntry(fields)
    if (entry !== null) log.set(thingOf(entry.word), entry)
  }
  return {
    round: { facts: { ...readFacts(file, id), planNumbers: planNumbersIn(object) }, log: log as RoundLog },
    faults,
  }
}

function readFacts(file: FieldsOf, id: string): Omit<RoundFacts, 'planNumbers'> {
  return {
    id,
    date: file.text('date'),
    tee: file.text('tee'),
    format: file.text('format'),
    course: file.text('course'),
    courseId: file.text('course_id'),
    player: file.text('player'),
    playerId: file.text('player_id'),
    // What does not say that it is practice is held to the Rules.
    purpose: file.text('purpose') === 'practice' ? 'practice' : 'counting',
    hasDevices: file.truth('devices'),
    isTextOnly: file.truth('text_only'),
    clubs: file.words('clubs').flatMap((club) => logClub(club) ?? []),
    card: file.list('card').flatMap(readCardHole),
  }
}

function readCardHole(hole: FieldsOf): CardHole[] {
  const ref = hole.text('ref')
  if (ref === null) {
    hole.missing('ref')
    return []
  }
  return [
    {
      ref,
      par: hole.number('par', { from: 1, to: 9, unit: 'strokes', isWhole: true }),
      facts: hole.words('facts'),
      club: hole.text('club') ?? '',
      words: hole.text('words') ?? '',
      numbers: hole.text('numbers') ?? '',
    },
  ]
}

function readEntry(entry: FieldsOf): LogEntry | null {
  const [count, by] = [entry.number('count', { ...ANY, isWhole: true }), entry.text('by')]
  if (count === null || by === null) {
    entry.missing(count === null ? 'count' : 'by')
    return null
  }
  const word = readWord(entry)
  if (word === null) entry.missing('hole')
  return word === null ? null : { word, count, by }
}

function readWord(entry: FieldsOf): LogWord | null {
  const [id, hole] = [entry.text('stroke'), entry.text('hole')]
  if (id !== null && entry.truth('gone')) return { kind: 'stroke', id, stroke: null }
  if (id !== null && hole !== null) {
    const stroke = {
      hole,
      order: entry.number('order', { ...ANY, unit: 'strokes' }) ?? 1,
      club: logClub(entry.text('club') ?? ''),
      finish: readFinish(entry.object('to')),
      penalty: entry.number('penalty', COUNT),
      isAsPlanned: entry.truth('asPlanned'),
    }
    return { kind: 'stroke', id, stroke }
  }
  if (entry.truth('closed')) return { kind: 'closed' }
  if (hole === null) return null
  if (entry.has('putts')) return { kind: 'putts', hole, putts: entry.number('putts', COUNT) }
  if (entry.has('firstPutt_m')) return { kind: 'first putt', hole, metres: entry.number('firstPutt_m', LEFT) }
  if (entry.has('pickedUp')) return { kind: 'picked up', hole, isSo: entry.truth('pickedUp') }
  return entry.has('skipped') ? { kind: 'skipped', hole, isSo: entry.truth('skipped') } : null
}
