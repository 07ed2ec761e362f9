import type { FaultCode } from '#faults/codes.ts'
import type { Fault } from '#faults/fault.ts'
import { nearestWord } from '#faults/nearest-word.ts'
import { LIES, type Lie } from '#golf/player/player.ts'

/** What a number may be. */
export interface NumberRange {
  readonly from: number
  readonly to: number
  readonly unit: string
  readonly isWhole?: boolean
}

/** One object of a round file, read field by field; what is wrong goes to a list and reads as absent. */
export interface FieldsOf {
  /** Its own name in the file, such as `holes[2].strokes[0]`. */
  readonly path: string
  readonly number: (name: string, range: NumberRange) => number | null
  readonly text: (name: string) => string | null
  /** False when the field is absent or faulty. */
  readonly truth: (name: string) => boolean
  readonly lie: (name: string) => Lie | null
  readonly object: (name: string) => FieldsOf | null
  /** The objects of a list; empty when the field is absent or faulty. */
  readonly list: (name: string) => readonly FieldsOf[]
  /** The texts of a list; empty when the field is absent or faulty. */
  readonly words: (name: string) => readonly string[]
  /** Whether the field is there at all, as `null` too. */
  readonly has: (name: string) => boolean
  readonly missing: (name: string) => void
  readonly say: (code: FaultCode, name: string, rest: string, advice: string) => void
  /** Tells of every field but these. */
  readonly allowOnly: (...names: readonly string[]) => void
}

/** Reads a JSON object of a round file. */
export function fieldsOf(json: object, path: string, faults: Fault[]): FieldsOf {
  const fields = json as Readonly<Record<string, unknown>>
  const pathOf = (name: string): string => (path === '' ? name : `${path}.${name}`)
  const present = (name: string): unknown => (Object.hasOwn(fields, name) ? fields[name] : null) ?? null
  const say = (code: FaultCode, name: string, rest: string, advice: string): void => {
    const severity = code === 'MAR-ROUND-003' ? 'warning' : 'error'
    faults.push({ severity, code, message: `${pathOf(name)} ${rest}`, place: pathOf(name), advice })
  }
  const wrong = (name: string, what: string): null => {
    say('MAR-ROUND-004', name, `is ${shown(present(name))}, not ${what}.`, 'It was read as not known.')
    return null
  }
  const inside = (value: unknown, name: string): FieldsOf | null =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? fieldsOf(value, pathOf(name), faults)
      : null
  return {
    path,
    say,
    number(name, { from, to, unit, isWhole }) {
      const value = present(name)
      if (value === null) return null
      if (typeof value === 'number' && value >= from && value <= to && (!isWhole || Number.isInteger(value)))
        return value
      return wrong(name, `a ${isWhole ? 'whole ' : ''}number from ${from} to ${to} ${unit}`)
    },
    text(name) {
      const value = present(name)
      if (value === null) return null
      if (typeof value === 'string' && value.trim() !== '') return value.trim()
      return typeof value === 'number' ? String(value) : wrong(name, 'a text')
    },
    truth(name) {
      const value = present(name)
      if (value !== null && typeof value !== 'boolean') wrong(name, 'true or false')
      return value === true
    },
    lie(name) {
      const value = present(name)
      if (value === null) return null
      return LIES.find((lie) => lie === value) ?? wrong(name, `a lie (${LIES.join(', ')})`)
    },
    object(name) {
      const value = present(name)
      return value === null ? null : (inside(value, name) ?? wrong(name, 'an object in braces'))
    },
    list(name) {
      const value = present(name)
      if (value === null) return []
      if (!Array.isArray(value)) {
        wrong(name, 'a list in brackets')
        return []
      }
      // A place in the list is kept even where nothing of it can be read: a stroke that was played counts.
      return value.map((one, index) => {
        const found = inside(one, `${name}[${index}]`)
        if (found === null)
          say(
            'MAR-ROUND-004',
            `${name}[${index}]`,
            `is ${shown(one)}, not an object.`,
            'It was read as not known.',
          )
        return found ?? fieldsOf({}, pathOf(`${name}[${index}]`), faults)
      })
    },
    words(name) {
      const value = present(name)
      if (value === null) return []
      if (Array.isArray(value) && value.every((one) => typeof one === 'string')) return value
      wrong(name, 'a list of texts')
      return []
    },
    has: (name) => Object.hasOwn(fields, name),
    missing(name) {
      say('MAR-ROUND-004', name, 'is missing.', 'Add it to the file.')
    },
    allowOnly(...known) {
      for (const name of Object.keys(fields)) {
        if (known.includes(name)) continue
        const meant = nearestWord(name, known)
        say(
          'MAR-ROUND-003',
          name,
          'is not a field of round/1.',
          meant ? `Did you mean ${meant}?` : `Known here: ${known.join(', ')}.`,
        )
      }
    },
  }
}

function shown(value: unknown): string {
  if (Array.isArray(value)) return 'a list'
  if (value !== null && typeof value === 'object') return 'an object'
  return typeof value === 'string' ? `the text "${value}"` : String(value)
}
