import { Failure } from '#faults/failure.ts'
import type { Fault } from '#faults/fault.ts'
import { addHole } from './add-hole.ts'
import { dayParts } from './calendar.ts'
import { type LoggedLine, parseLogLine } from './parse-log-line.ts'
import type { PlanNumbers } from './plan-numbers.ts'
import type { LogUnit } from './read-distance.ts'
import type { Round, RoundHole } from './round.ts'

/** A round and everything that was wrong with its source. */
export interface ReadRound {
  readonly round: Round
  /** The id it was given when it was begun; `null` = none. */
  readonly id: string | null
  /** Name of the course, where the source has it. */
  readonly course: string | null
  /** What the plans of its day stood on, where the source has it. */
  readonly planNumbers: PlanNumbers | null
  readonly faults: readonly Fault[]
}

/**
 * A round from the lines of a paper log: `7: driver f-180 / 5i r-25 / sw g-6 / 2 putts`, a line a hole; before them
 * `date 2026-07-23`, `tee drift`, `unit metres`, and notes after `#`. Distances without a unit are in `unit`. What does
 * not make sense is told with line and column, and everything else is kept. Throws MAR-ROUND-008 when no line is a hole.
 */
export function parseLog(text: string, where: string, unit: LogUnit = 'yards'): ReadRound {
  const faults: Fault[] = []
  const head = { date: null as string | null, tee: null as string | null, format: null as string | null }
  const holes: RoundHole[] = []
  let inUnit = unit
  for (const [index, line] of text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .entries()) {
    const words = line.replace(/#.*$/, '')
    if (words.trim() === '') continue
    const named = /^\s*(date|tee|format|unit)\b\s*[:=]?\s*(.*?)\s*$/i.exec(words)
    if (named) {
      const [name, value] = [(named[1] as string).toLowerCase(), named[2] as string]
      if (name === 'date' && value !== '' && dayParts(value) === null)
        faults.push(fault(index, `"${value}" is no date.`, 'Write it like 2026-05-02.'))
      else if (name !== 'unit') head[name as keyof typeof head] = value === '' ? null : value
      else if (/^(yards?|yd|metres?|m)$/i.test(value)) inUnit = /^m/i.test(value) ? 'metres' : 'yards'
      else faults.push(fault(index, `"${value}" is no unit of this log.`, 'Write yards or metres.'))
      continue
    }
    const read: LoggedLine = parseLogLine(words, index + 1, inUnit)
    faults.push(...read.faults)
    if (read.hole === null) continue
    addHole(holes, read.hole, faults, {
      source: 'log',
      advice: 'Strike one of the two lines, or mend the number of the hole.',
    })
  }
  if (holes.length === 0)
    throw new Failure(
      'MAR-ROUND-008',
      'No line is a hole. Write one a line, like 7: driver f-180 / 5i r-25 / sw g-6 / 2 putts.',
      faults[0] === undefined ? where : `${where}: ${faults[0].place}`,
    )
  return { round: { ...head, holes }, id: null, course: null, planNumbers: null, faults }
}

function fault(index: number, message: string, advice: string): Fault {
  return { severity: 'error', code: 'MAR-ROUND-006', message, place: `line ${index + 1}`, advice }
}
