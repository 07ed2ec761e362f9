import type { Fault } from '#faults/fault.ts'
import { encodeRound } from '#golf/round/encode-round.ts'
import { logOfHoles } from '#golf/round/log-of-holes.ts'
import { parseLogLine } from '#golf/round/parse-log-line.ts'
import { encodePlanNumbers, type PlanNumbers } from '#golf/round/plan-numbers.ts'
import type { RoundHole } from '#golf/round/round.ts'
import type { Place } from '../documents/own-storage.ts'

/** A paper log while it is typed, a line a hole. */
export interface TypedLog {
  readonly courseId: string
  readonly playerId: string
  readonly date: string
  readonly tee: string
  readonly lines: Readonly<Record<string, string>>
}

/** What a line says, and what of it does not make sense, with its place in the line. */
export interface ReadLine {
  readonly hole: RoundHole | null
  readonly faults: readonly Fault[]
}

/** Reads what was typed beside a hole; an empty line says nothing. */
export function readLine(ref: string, line: string, units: 'yards' | 'metres'): ReadLine {
  if (line.trim() === '') return { hole: null, faults: [] }
  const before = `${ref}: `
  const { hole, faults } = parseLogLine(`${before}${line}`, 1, units)
  const placed = faults.map((fault) => ({
    ...fault,
    place: fault.place
      .replace('line 1, ', '')
      .replace(
        /column (\d+)/,
        (_, column: string) => `column ${Math.max(1, Number(column) - before.length)}`,
      ),
  }))
  return { hole, faults: placed }
}

/** The holes that can be read. */
export function holesOf(
  log: TypedLog,
  refs: readonly string[],
  units: 'yards' | 'metres',
): readonly RoundHole[] {
  return refs.flatMap((ref) => readLine(ref, log.lines[ref] ?? '', units).hole ?? [])
}

/** The typed round as a `round/1` file under its id. */
export function roundOfTyped(
  log: TypedLog,
  holes: readonly RoundHole[],
  names: { readonly course: string; readonly player: string },
  mark: string,
  numbers: PlanNumbers | null,
): { readonly id: string; readonly text: string } {
  const id = `round-${log.date}-${mark}`
  const facts = {
    id,
    date: log.date,
    tee: log.tee === '' ? null : log.tee,
    format: 'strokes',
    ...names,
    courseId: log.courseId,
    playerId: log.playerId,
    purpose: 'counting',
    hasDevices: true,
    isTextOnly: false,
    clubs: [],
    card: [],
    planNumbers: numbers && encodePlanNumbers(numbers),
  } as const
  return { id, text: encodeRound({ facts, log: logOfHoles(holes, `paper-${mark}`) }) }
}

const KEPT = 'marram.paper-log'

/** What was typed and not kept as a round yet; `null` when nothing was. */
export function typedBefore(storage: Place): TypedLog | null {
  try {
    const kept = JSON.parse(storage.getItem(KEPT) ?? 'null') as Partial<TypedLog> | null
    if (kept === null || typeof kept.lines !== 'object' || kept.lines === null) return null
    const word = (value: unknown): string => (typeof value === 'string' ? value : '')
    const lines = Object.entries(kept.lines).filter(([, line]) => typeof line === 'string')
    return {
      courseId: word(kept.courseId),
      playerId: word(kept.playerId),
      date: word(kept.date),
      tee: word(kept.tee),
      lines: Object.fromEntries(lines),
    }
  } catch {
    return null
  }
}

/** Keeps what is typed in this browser, at every key; `null` lets go of it. */
export function keepTyped(log: TypedLog | null, storage: Place): void {
  try {
    if (log === null) storage.removeItem(KEPT)
    else storage.setItem(KEPT, JSON.stringify(log))
  } catch {
    // Then it is in this tab alone.
  }
}
