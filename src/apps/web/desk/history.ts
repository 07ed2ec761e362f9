import { DESK_SETTINGS } from '../settings.ts'

/** What an edit was part of. */
export interface EditMark {
  readonly kind: string
  /** When, milliseconds. */
  readonly at: number
  /** The drag it belongs to; `null` = none. */
  readonly drag: number | null
}

/** A value with its past. */
export interface History<Value> {
  readonly now: Value
  /** Oldest first. */
  readonly past: readonly Value[]
  /** What the last edit was, so that a drag or a run of clicks becomes one step. */
  readonly last: EditMark | null
}

/** A history that begins now. */
export function beginHistory<Value>(now: Value): History<Value> {
  return { now, past: [], last: null }
}

/** The history after an edit; edits of one drag, and edits of one kind in quick succession, are one step. */
export function remember<Value>(history: History<Value>, next: Value, mark: EditMark): History<Value> {
  if (next === history.now) return history
  const { last } = history
  const isSameDrag = last !== null && mark.drag !== null && last.drag === mark.drag
  const isSameRun =
    last !== null &&
    mark.drag === null &&
    last.kind === mark.kind &&
    mark.at - last.at < DESK_SETTINGS.oneEditMilliseconds
  const isOneStep = history.past.length > 0 && (isSameDrag || isSameRun)
  const past = isOneStep ? history.past : [...history.past, history.now].slice(-DESK_SETTINGS.undoSteps)
  return { now: next, past, last: mark }
}

/** One step back; the same history when there is none. */
export function undo<Value>(history: History<Value>): History<Value> {
  const before = history.past.at(-1)
  return before === undefined ? history : { now: before, past: history.past.slice(0, -1), last: null }
}
