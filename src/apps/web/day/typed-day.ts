import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import type { Course } from '#golf/course/course.ts'
import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import { dayPinWords } from '#golf/course/day-pin-words.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parsePin } from '#golf/course/parse-pins.ts'

/** A day while it is typed: its pins stand as lines until it is kept. */
export interface TypedDay {
  /** The day of the store that it changes; empty for a new one. */
  readonly dayId: string
  /** The revision it goes on from; empty for a new one. */
  readonly revision: string
  readonly day: Day
  /** The pins of the course's holes as they are typed. */
  readonly lines: Readonly<Record<string, string>>
}

/** A day that nobody has described yet. */
export function newDay(date: string): TypedDay {
  return { dayId: '', revision: '', day: { ...REFERENCE_DAY, date }, lines: {} }
}

/** A kept day to be typed on. */
export function typedFrom(day: Day, dayId: string, revision: string): TypedDay {
  const lines = Object.fromEntries(Object.entries(day.pins).map(([ref, pin]) => [ref, dayPinWords(pin)]))
  return { dayId, revision, day, lines }
}

/** A hole with its pin as typed, or without it where that is not read or lies off the green. */
export interface HoleOfDay {
  readonly hole: Hole | null
  readonly fault: Fault | null
}

/** Cuts the hole where a line says. An empty line leaves it to the survey. */
export function holeOfDay(course: Course, ref: string, line: string, day: Day): HoleOfDay {
  const { [ref]: _, ...others } = day.pins
  const without = { ...day, pins: others }
  const read = line.trim() === '' ? { pin: null, fault: null } : parsePin(line, '')
  const laid = layOut(
    course,
    ref,
    read.pin === null ? without : { ...without, pins: { ...others, [ref]: read.pin } },
  )
  if (laid.hole !== null || read.pin === null) return { hole: laid.hole, fault: read.fault ?? laid.fault }
  return { hole: layOut(course, ref, without).hole, fault: laid.fault }
}

function layOut(course: Course, ref: string, day: Day): HoleOfDay {
  try {
    return { hole: holeFromCourse(course, ref, { day }), fault: null }
  } catch (error) {
    if (!(error instanceof Failure)) throw error
    const { code, message } = error
    return { hole: null, fault: { severity: 'error', code, message, place: '', advice: '' } }
  }
}

/** The day with the pins that its lines say on the holes of a course; those of other holes stay as they were. */
export function dayOf({ day, lines }: TypedDay, refs: readonly string[]): Day {
  const pins = { ...day.pins }
  for (const ref of refs) {
    const { pin } = parsePin(lines[ref] ?? '', '')
    if (pin === null) delete pins[ref]
    else pins[ref] = pin
  }
  return { ...day, pins }
}
