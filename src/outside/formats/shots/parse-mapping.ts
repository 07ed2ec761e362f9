import { Failure } from '#faults/failure.ts'
import type { ColumnMeaning } from './column-meaning.ts'
import { ownMeaning, tidyHeading } from './column-meaning.ts'

/** What a person says the columns of a table are: heading, or `#3` for the third column, → meaning. */
export type ColumnMapping = ReadonlyMap<string, ColumnMeaning>

/**
 * A mapping as typed: `Club=club,Carry=carry_yd,Side=offline_m:left-positive`. A heading with a comma stands in
 * quotes. Throws `MAR-SHOTS-002`.
 */
export function parseMapping(text: string, where: string): ColumnMapping {
  const mapping = new Map<string, ColumnMeaning>()
  const parts = text.match(/(?:"[^"]*"|[^,"])+/g) ?? []
  for (const part of parts) {
    const found = /^\s*(?:"([^"]+)"|(.+?))\s*=\s*([^=]+?)\s*$/.exec(part)
    if (found === null)
      throw refusal(`“${part.trim()}” does not say what a column is: write heading=meaning`, where)
    add(mapping, found[1] ?? found[2] ?? '', found[3] ?? '', where)
  }
  return complete(mapping, where)
}

/** The same from a JSON object: `{"Club": "club", "Carry": "carry_yd"}`. Throws `MAR-SHOTS-002`. */
export function parseMappingJson(text: string, where: string): ColumnMapping {
  const mapping = new Map<string, ColumnMeaning>()
  for (const [heading, meaning] of Object.entries(jsonObject(text, where))) {
    if (typeof meaning !== 'string') throw refusal(`the meaning of “${heading}” is not a text`, where)
    add(mapping, heading, meaning, where)
  }
  return complete(mapping, where)
}

/** The meaning a column was given, as it is typed: `offline_yd:left-positive`. */
export function meaningText(meaning: ColumnMeaning): string {
  if (meaning.what === 'date') return meaning.order === null ? 'date' : `date:${meaning.order}`
  if (meaning.what === 'carry' || meaning.what === 'total')
    return `${meaning.what}_${meaning.unit ?? '?'}${meaning.isStraight ? ':straight' : ''}`
  if (meaning.what === 'offline')
    return `offline_${meaning.unit ?? '?'}:${meaning.isLeftPositive ? 'left-positive' : 'left-negative'}`
  return meaning.what
}

function add(mapping: Map<string, ColumnMeaning>, heading: string, word: string, where: string): void {
  const [name = '', ...extras] = word.trim().toLowerCase().split(':')
  if (name.endsWith('_?')) throw refusal(`“${word}” of “${heading}”: write the unit in place of the ?`, where)
  const plain = ownMeaning(name)
  if (plain === null || tidyHeading(name) !== name)
    throw refusal(`“${word}” is no meaning of a column`, where)
  let meaning: ColumnMeaning = plain
  for (const extra of extras) {
    const told = withExtra(meaning, extra)
    if (told === null) throw refusal(`“${extra}” says nothing about ${meaning.what}`, where)
    meaning = told
  }
  mapping.set(heading, meaning)
}

function withExtra(meaning: ColumnMeaning, extra: string): ColumnMeaning | null {
  if (meaning.what === 'date' && (extra === 'day-first' || extra === 'month-first'))
    return { ...meaning, order: extra }
  if (meaning.what === 'offline' && (extra === 'left-positive' || extra === 'left-negative'))
    return { ...meaning, isLeftPositive: extra === 'left-positive' }
  if ((meaning.what === 'carry' || meaning.what === 'total') && extra === 'straight')
    return { ...meaning, isStraight: true }
  return null
}

function complete(mapping: ReadonlyMap<string, ColumnMeaning>, where: string): ColumnMapping {
  const meanings = [...mapping.values()].map(({ what }) => what)
  const twice = meanings.find((what, index) => meanings.indexOf(what) !== index)
  if (twice !== undefined) throw refusal(`two columns are ${twice}`, where)
  if (!meanings.includes('club')) throw refusal('no column is the club', where)
  if (!meanings.includes('carry') && !meanings.includes('total'))
    throw refusal('no column is the carry or the total', where)
  return mapping
}

function jsonObject(text: string, where: string): object {
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''))
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value
  } catch {
    // Told below: what is no JSON is no object either.
  }
  throw refusal('the file is not one JSON object of headings and meanings', where)
}

function refusal(reason: string, where: string): Failure {
  return new Failure(
    'MAR-SHOTS-002',
    `The columns cannot be read: ${reason}. Meanings: club, date (:day-first or :month-first), lie, strike, planned, carry_m or carry_yd, total_m or total_yd (:straight when measured from ball to ball), offline_m, offline_yd or offline_deg (:left-negative or :left-positive).`,
    where,
  )
}
