import { DESK_SETTINGS } from '../settings.ts'

/** A value with its past. */
export interface History<Value> {
  readonly now: Value
  /** Oldest first. */
  readonly past: readonly Value[]
  /** What the last edit was and when, so that a drag becomes one step. */
  readonly last: { readonly kind: string; readonly at: number } | null
}

/** A history that begins now. */
export function beginHistory<Value>(now: Value): History<Value> {
  return { now, past: [], last: null }
}

/** The history after an edit of a kind at a time in milliseconds; edits of one kind in quick succession are one step. */
export function remember<Value>(
  history: History<Value>,
  next: Value,
  kind: string,
  at: number,
): History<Value> {
  if (next === history.now) return history
  const isSame =
    history.last !== null &&
    history.last.kind === kind &&
    at - history.last.at < DESK_SETTINGS.oneEditMilliseconds &&
    history.past.length > 0
  const past = isSame ? history.past : [...history.past, history.now].slice(-DESK_SETTINGS.undoSteps)
  return { now: next, past, last: { kind, at } }
}

/** One step back; the same history when there is none. */
export function undo<Value>(history: History<Value>): History<Value> {
  const before = history.past.at(-1)
  return before === undefined ? history : { now: before, past: history.past.slice(0, -1), last: null }
}
