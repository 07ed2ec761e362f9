import { useCallback, useState } from 'react'
import type { Desk } from '../desk/desk.ts'
import { beginHistory, remember, undo as undoOnce } from '../desk/history.ts'

/** The desk with its past: `edit` takes a kind, so that a drag is one step, and a pure function from old to new. */
export function useDesk(open: () => Desk): {
  readonly desk: Desk
  readonly edit: (kind: string, change: (desk: Desk) => Desk) => void
  readonly undo: () => void
  readonly canUndo: boolean
} {
  const [history, setHistory] = useState(() => beginHistory(open()))
  const edit = useCallback((kind: string, change: (desk: Desk) => Desk) => {
    setHistory((before) => {
      const next = change(before.now)
      // Opening a course at its first hole is no choice of the person's.
      return kind === 'open' ? { ...before, now: next } : remember(before, next, kind, Date.now())
    })
  }, [])
  const undo = useCallback(() => setHistory(undoOnce), [])
  return { desk: history.now, edit, undo, canUndo: history.past.length > 0 }
}
