import type { FaultCode } from '#faults/codes.ts'
import { nearestWord } from '#faults/nearest-word.ts'

/** One thing wrong with a field of a document. */
export interface FieldFault {
  readonly code: FaultCode
  readonly field: string
  readonly message: string
}

/** What a number may be, ends included, and how to name its unit to a person. */
interface NumberRange {
  readonly from: number
  readonly to: number
  readonly unit: string
}

/** One object of a JSON document, read field by field; every fault goes to a list, and the reader reads on. */
export interface FieldReader {
  /** The number of a field, `null` when the field is absent, null or faulty. */
  readonly number: (name: string, range: NumberRange) => number | null
  /** One of the given words, `null` when the field is absent, null or faulty. */
  readonly word: <Word extends string>(name: string, words: readonly Word[]) => Word | null
  /** Text of a form, `null` when the field is absent, null or faulty. */
  readonly text: (name: string, form: RegExp, example: string) => string | null
  /** The object of a field, `null` when the field is absent, null or faulty. */
  readonly object: (name: string) => FieldReader | null
  /** Field names in the order of the document. */
  readonly names: readonly string[]
  /** Reports that a field must be there. */
  readonly require: (...names: readonly string[]) => void
  /** Reports every field but the given ones. */
  readonly allowOnly: (...names: readonly string[]) => void
}

/** Reads a JSON object; `path` is its own name in the document, empty for the whole. */
export function fieldReader(json: object, path: string, faults: FieldFault[]): FieldReader {
  const fields = json as Readonly<Record<string, unknown>>
  const names = Object.keys(json)
  const fieldPath = (name: string): string => (path === '' ? name : `${path}.${name}`)
  const report = (code: FaultCode, name: string, rest: string): null => {
    faults.push({ code, field: fieldPath(name), message: `${fieldPath(name)} ${rest}` })
    return null
  }
  const present = (name: string): unknown => (names.includes(name) ? fields[name] : null) ?? null
  return {
    names,
    number(name, range) {
      const value = present(name)
      if (value === null) return null
      if (typeof value !== 'number') return report('MAR-DAY-004', name, `is ${shown(value)}, not a number.`)
      if (value >= range.from && value <= range.to) return value
      return report('MAR-DAY-005', name, `is ${value}; it can be ${range.from} to ${range.to} ${range.unit}.`)
    },
    word(name, words) {
      const value = present(name)
      if (value === null) return null
      const found = words.find((word) => word === value)
      return found ?? report('MAR-DAY-004', name, `is ${shown(value)}; it can be ${words.join(', ')}.`)
    },
    text(name, form, example) {
      const value = present(name)
      if (value === null) return null
      if (typeof value === 'string' && form.test(value)) return value
      return report('MAR-DAY-004', name, `is ${shown(value)}; write it like "${example}".`)
    },
    object(name) {
      const value = present(name)
      if (value === null) return null
      if (typeof value === 'object' && !Array.isArray(value))
        return fieldReader(value, fieldPath(name), faults)
      return report('MAR-DAY-004', name, `is ${shown(value)}, not an object in braces.`)
    },
    require(...required) {
      for (const name of required) if (present(name) === null) report('MAR-DAY-004', name, 'is missing.')
    },
    allowOnly(...known) {
      for (const name of names) {
        if (known.includes(name)) continue
        const meant = nearestWord(name, known)
        const hint = meant ? `Did you mean ${meant}?` : `Known here: ${known.join(', ')}.`
        report('MAR-DAY-003', name, `is not a field of day/1. ${hint}`)
      }
    },
  }
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list'
  if (typeof value === 'object') return 'an object'
  return typeof value === 'string' ? `the text "${value}"` : String(value)
}
