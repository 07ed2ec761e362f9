import { useCallback, useState } from 'react'
import type { Desk } from '../desk/desk.ts'
import { beginHistory, remember, undo as undoOnce } from '../desk/history.ts'

/** Changes the desk by a pure function; edits of one drag, or of one kind in quick succession, are one step of undo. */
export type Edit = (kind: string, change: (desk: Desk) => Desk, drag?: number | null) => void

/** The desk with its past. */
export function useDesk(open: () => Desk): {
  readonly desk: Desk
  readonly edit: Edit
  readonly undo: () => void
  readonly canUndo: boolean
  /** How many steps of undo lie behind the desk. */
  readonly step: number
} {
  const [history, setHistory] = useState(() => beginHistory(open()))
  const edit = useCallback<Edit>((kind, change, drag = null) => {
    setHistory((before) => {
      const next = change(before.now)
      // Opening a course at its first hole is no choice of the person's.
      return kind === 'open'
        ? { ...before, now: next }
        : remember(before, next, { kind, at: Date.now(), drag })
    })
  }, [])
  const undo = useCallback(() => setHistory(undoOnce), [])
  return { desk: history.now, edit, undo, canUndo: history.past.length > 0, step: history.past.length }
}
