import { DESK_SETTINGS } from '../settings.ts'

/** What an edit was part of. */
export interface EditMark {
  readonly kind: string
  /** When, milliseconds. */
  readonly at: number
  /** The drag it belongs to; `null` = none. */
  readonly drag: number | null
}

/** A value with its past, and with what was taken back. */
export interface History<Value> {
  readonly now: Value
  /** Oldest first. */
  readonly past: readonly Value[]
  /** What was undone, the step undone last first. */
  readonly future: readonly Value[]
  /** What the last edit was, so that a drag or a run of clicks becomes one step. */
  readonly last: EditMark | null
}

/** A history that begins now, or goes on from steps that were kept. */
export function beginHistory<Value>(
  now: Value,
  { past, future }: Pick<History<Value>, 'past' | 'future'> = { past: [], future: [] },
): History<Value> {
  return { now, past, future, last: null }
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
  const past = isOneStep ? history.past : [...history.past, history.now]
  return { now: next, past, future: [], last: mark }
}

/** One step back; the same history when there is none. */
export function undo<Value>(history: History<Value>): History<Value> {
  const before = history.past.at(-1)
  if (before === undefined) return history
  return {
    now: before,
    past: history.past.slice(0, -1),
    future: [history.now, ...history.future],
    last: null,
  }
}

/** One step forward again; the same history when nothing was taken back. */
export function redo<Value>(history: History<Value>): History<Value> {
  const [after, ...future] = history.future
  return after === undefined
    ? history
    : { now: after, past: [...history.past, history.now], future, last: null }
}
