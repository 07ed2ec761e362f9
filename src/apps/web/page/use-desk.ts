import { useCallback, useEffect, useState } from 'react'
import type { Desk } from '../desk/desk.ts'
import { beginHistory, type History, redo, remember, undo } from '../desk/history.ts'
import { keepDesk, keepSteps } from '../desk/kept-desk.ts'
import { tabStorage } from '../documents/own-storage.ts'
import { DESK_SETTINGS } from '../settings.ts'

/** Changes the desk by a pure function; edits of one drag, or of one kind in quick succession, are one step of undo. */
export type Edit = (kind: string, change: (desk: Desk) => Desk, drag?: number | null) => void

/** The desk with its past, both kept for when the page is loaded again. */
export function useDesk(
  open: () => Desk,
  steps: () => Pick<History<Desk>, 'past' | 'future'>,
): {
  readonly desk: Desk
  readonly edit: Edit
  readonly undo: () => void
  readonly redo: () => void
  readonly canUndo: boolean
  readonly canRedo: boolean
  /** How many steps of undo lie behind the desk. */
  readonly step: number
} {
  const [history, setHistory] = useState(() => beginHistory(open(), steps()))
  const { now: desk, past, future } = history
  const edit = useCallback<Edit>((kind, change, drag = null) => {
    setHistory((before) => {
      const next = change(before.now)
      // Opening a course at its first hole is no choice of the person's.
      return kind === 'open'
        ? { ...before, now: next }
        : remember(before, next, { kind, at: Date.now(), drag })
    })
  }, [])
  useEffect(() => keepDesk(desk, tabStorage), [desk])
  // Many steps take a moment to write: once a drag is over, and at the latest when the page goes.
  useEffect(() => {
    const keep = (): void => keepSteps({ past, future }, tabStorage)
    const later = setTimeout(keep, DESK_SETTINGS.keepStepsMilliseconds)
    addEventListener('pagehide', keep)
    return () => {
      clearTimeout(later)
      removeEventListener('pagehide', keep)
    }
  }, [past, future])
  return {
    desk,
    edit,
    undo: useCallback(() => setHistory(undo), []),
    redo: useCallback(() => setHistory(redo), []),
    canUndo: past.length > 0,
    canRedo: future.length > 0,
    step: past.length,
  }
}
