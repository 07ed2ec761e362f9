import type { TeeSet } from '../course.ts'
import type { LonLat } from '../survey-feature.ts'
import type { Tally } from './tally.ts'

/** What a source says of the course as a whole. */
export interface CourseHeader {
  /** True for our own course file, whose holes and refs are taken as they stand. */
  readonly isCourseFile: boolean
  readonly name: string | null
  readonly origin: LonLat | null
  readonly teeSets: readonly TeeSet[]
  readonly localRules: readonly string[]
  readonly source: string | null
  readonly credit: string | null
}

type Members = Readonly<Record<string, unknown>>

/** The `marram` object and the `marram:*` members of a collection; what cannot be read is a fault and left out. */
export function readHeader(collection: Members, tally: Tally): CourseHeader {
  const given = collection.marram
  const marram = isMembers(given) ? given : {}
  if (given !== undefined && !isMembers(given)) fault(tally, 'marram', 'it is not an object')
  const schema = marram.schema
  if (schema !== undefined && schema !== 'course/1') {
    tally.fault(
      'error',
      'MAR-IMPORT-025',
      'marram.schema',
      `The file says its schema is “${String(schema)}”; this Marram knows course/1.`,
      'Use a newer Marram, or save the course as course/1.',
    )
  }
  return {
    isCourseFile: schema !== undefined,
    name: readText(marram, 'name', tally),
    origin: readOrigin(marram.origin, tally),
    teeSets: readTeeSets(marram.tees, tally),
    localRules: readRules(marram.localRules, tally),
    source: readText(collection, 'marram:source', tally),
    credit: readText(collection, 'marram:credit', tally),
  }
}

function isMembers(value: unknown): value is Members {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function fault(tally: Tally, place: string, reason: string): null {
  const advice = 'Correct it in the course file; docs/course-file.md describes every member.'
  tally.fault('error', 'MAR-IMPORT-024', place, `“${place}” cannot be read: ${reason}.`, advice)
  return null
}

function readText(members: Members, key: string, tally: Tally): string | null {
  const value = members[key]
  if (value === undefined || value === null) return null
  return typeof value === 'string' ? value : fault(tally, key, 'it is not a text')
}

function readOrigin(value: unknown, tally: Tally): LonLat | null {
  if (value === undefined || value === null) return null
  const reason = 'it is not [longitude, latitude] in degrees'
  if (!Array.isArray(value) || value.length !== 2) return fault(tally, 'marram.origin', reason)
  const [longitude, latitude] = value
  const isPosition =
    typeof longitude === 'number' &&
    typeof latitude === 'number' &&
    Math.abs(longitude) <= 180 &&
    Math.abs(latitude) <= 90
  return isPosition ? [longitude, latitude] : fault(tally, 'marram.origin', reason)
}

function readTeeSets(value: unknown, tally: Tally): TeeSet[] {
  if (value === undefined) return []
  if (!Array.isArray(value)) {
    fault(tally, 'marram.tees', 'it is not a list')
    return []
  }
  return value.flatMap((item: unknown, index): TeeSet[] => {
    const place = `marram.tees[${index}]`
    if (!isMembers(item) || typeof item.name !== 'string') {
      fault(tally, place, 'it has no name')
      return []
    }
    const number = (key: string): number | null => {
      const found = item[key]
      if (found === undefined || found === null) return null
      return typeof found === 'number' ? found : fault(tally, `${place}.${key}`, 'it is not a number')
    }
    return [
      {
        name: item.name,
        par: number('par'),
        courseRating: number('courseRating'),
        slopeRating: number('slopeRating'),
      },
    ]
  })
}

function readRules(value: unknown, tally: Tally): string[] {
  if (value === undefined) return []
  if (Array.isArray(value) && value.every((rule) => typeof rule === 'string'))
    return value.map((rule: string) => ruleName(rule, tally))
  fault(tally, 'marram.localRules', 'it is not a list of texts')
  return []
}

/** A model Local Rule by its number in the Committee Procedures, however it is typed: `g 11`, `MLR G-11`. */
function ruleName(typed: string, tally: Tally): string {
  const [, section, number] = MODEL_RULE.exec(typed.trim()) ?? []
  if (section !== undefined && number !== undefined) return `${section.toUpperCase()}-${number}`
  tally.fault(
    'warning',
    'MAR-IMPORT-024',
    'marram.localRules',
    `“${typed}” is no model Local Rule by its number, so nothing is done about it.`,
    'Write a model Local Rule as the Committee Procedures number it, such as G-11; leave others to the notice board.',
  )
  return typed
}

const MODEL_RULE = /^(?:model\s+)?(?:local\s+rule|mlr)?\s*([a-p])\s*[-–.]?\s*(\d{1,2})$/i
