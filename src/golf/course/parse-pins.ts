import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Day, DayPin } from './day.ts'
import { DAY_RANGES } from './settings.ts'

/** What the typed paces of one hole say, or what is wrong with them. */
export interface ReadPin {
  readonly pin: DayPin | null
  readonly fault: Fault | null
}

/**
 * A hole location as a pin sheet says it: paces on from the front of the green, then paces in from its left or right edge
 * or the middle: `14 on, 6 left`, `14 6L`, `14/6 r`, `14 middle`. `place` names it in the fault.
 */
export function parsePin(words: string, place: string): ReadPin {
  const [, on, side, edge, middle] = PIN.exec(words) ?? []
  if (on === undefined) return faulty(`"${words.trim()}" is not read as a hole location.`)
  const pin: DayPin =
    middle === undefined
      ? {
          yPaces: Number(on),
          xPaces: Number(side),
          from: edge?.toLowerCase().startsWith('l') ? 'left' : 'right',
        }
      : { yPaces: Number(on), xPaces: 0, from: 'middle' }
  const { to } = DAY_RANGES.pinPaces
  const far = [pin.yPaces, pin.xPaces].find((paces) => paces > to)
  if (far !== undefined) return faulty(`${far} paces is further than the ${to} a green can be.`)
  return { pin, fault: null }

  function faulty(message: string): ReadPin {
    const advice = 'Write the paces on from the front, then in from a side, like 14 on, 6 left, or 14 middle.'
    return { pin: null, fault: { severity: 'error', code: 'MAR-DAY-008', message, place, advice } }
  }
}

const PIN =
  /^\s*(\d+(?:\.\d+)?)\s*(?:on\b)?[\s,/]*(?:(\d+(?:\.\d+)?)\s*(?:from\s+(?:the\s+)?)?(l|left|r|right)|(m|middle|c|cent(?:re|er)))\s*$/i

/** The holes of a typed pin sheet, and everything that was wrong with its lines. */
export interface ReadPins {
  readonly pins: Day['pins']
  readonly faults: readonly Fault[]
}

/** A pin sheet typed a line a hole, `7: 14 on, 6 left`, notes after `#`. What does not make sense is told with its line. */
export function parsePins(text: string): ReadPins {
  const pins: Record<string, DayPin> = {}
  const faults: Fault[] = []
  for (const [index, line] of text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .entries()) {
    const words = line.replace(/#.*$/, '')
    if (words.trim() === '') continue
    const place = `line ${index + 1}`
    const [, ref, said] = /^\s*(?:hole\s+)?([^\s:]{1,4})\s*:\s*(.*)$/i.exec(words) ?? []
    if (ref === undefined || said === undefined)
      faults.push({
        severity: 'error',
        code: 'MAR-DAY-008',
        message: 'The line does not begin with a hole and a colon.',
        place,
        advice: 'Write it like 7: 14 on, 6 left.',
      })
    else if (Object.hasOwn(pins, ref))
      faults.push({
        severity: 'error',
        code: 'MAR-DAY-009',
        message: `Hole ${ref} has a second hole location.`,
        place,
        advice: 'Strike one of the two lines, or mend the number of the hole.',
      })
    else {
      const { pin, fault } = parsePin(said, `${place}, hole ${ref}`)
      if (pin !== null) pins[ref] = pin
      if (fault !== null) faults.push(fault)
    }
  }
  return { pins, faults }
}

/** The same where a sheet must be whole. Throws a Failure for the first fault, which says how many more there are. */
export function requirePins(text: string, where: string): Day['pins'] {
  const { pins, faults } = parsePins(text)
  const [first, ...more] = faults
  if (first !== undefined)
    throw new Failure(
      first.code,
      `${first.message} ${first.advice}${more.length === 0 ? '' : ` (${more.length} more in the file.)`}`,
      `${where}: ${first.place}`,
    )
  if (Object.keys(pins).length === 0)
    throw new Failure(
      'MAR-DAY-008',
      'No line is a hole location. Write one a line, like 7: 14 on, 6 left.',
      where,
    )
  return pins
}
