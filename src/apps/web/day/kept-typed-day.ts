import { encodeDay } from '#golf/course/encode-day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import type { Place } from '../documents/own-storage.ts'
import type { TypedDay } from './typed-day.ts'

const KEPT = 'marram.typed-day'

/** What was typed of a day and not kept in the store yet; `null` when nothing was. */
export function typedDayBefore(storage: Place): TypedDay | null {
  try {
    const kept = JSON.parse(storage.getItem(KEPT) ?? 'null') as Record<string, unknown> | null
    if (typeof kept?.day !== 'string' || typeof kept.lines !== 'object' || kept.lines === null) return null
    const word = (value: unknown): string => (typeof value === 'string' ? value : '')
    const lines = Object.entries(kept.lines).filter(([, line]) => typeof line === 'string')
    return {
      dayId: word(kept.dayId),
      revision: word(kept.revision),
      day: parseDay(kept.day, KEPT),
      lines: Object.fromEntries(lines),
    }
  } catch {
    return null
  }
}

/** Keeps what is typed in this browser, at every key; `null` lets go of it. */
export function keepTypedDay(typed: TypedDay | null, storage: Place): void {
  try {
    if (typed === null) storage.removeItem(KEPT)
    else storage.setItem(KEPT, JSON.stringify({ ...typed, day: encodeDay(typed.day) }))
  } catch {
    // Then it is in this tab alone.
  }
}
