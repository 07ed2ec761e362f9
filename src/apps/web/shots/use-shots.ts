import { useCallback, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import { ownStorage } from '../documents/own-storage.ts'
import { shotKeeper } from './shot-keeper.ts'
import { type EnteredShot, enter, inverseOf, type NewShot, type SheetEdit } from './shot-sheet.ts'

/** The sheet of shots of a player, with what can be taken back. */
export interface Shots {
  readonly shots: readonly EnteredShot[]
  /** False while the browser would not keep them. */
  readonly isKept: boolean
  readonly canUndo: boolean
  readonly canRedo: boolean
  /** Puts shots down, all in one step. */
  put(records: readonly NewShot[]): void
  remove(shot: EnteredShot): void
  /** Takes the last step back; after the page was loaded again, the last shot. */
  undo(): void
  redo(): void
  /** Takes shots away that were learned from: no step that can be taken back, or they would count twice. */
  clear(learned: readonly EnteredShot[]): void
}

interface Steps {
  readonly done: readonly SheetEdit[]
  readonly undone: readonly SheetEdit[]
}

const NO_STEPS: Steps = { done: [], undone: [] }

/** The sheet of one player. */
export function useShots(playerId: string): Shots {
  const keeper = useMemo(() => shotKeeper(playerId, { storage: ownStorage, onOtherTab }), [playerId])
  const shots = useSyncExternalStore(keeper.listen, keeper.shots)
  const isKept = useSyncExternalStore(keeper.listen, keeper.isKept)
  const steps = useRef(NO_STEPS)
  const [can, setCan] = useState({ undo: false, redo: false })
  const tab = useRef(Math.random().toString(36).slice(2))

  const move = useCallback(
    (edit: SheetEdit, next: Steps) => {
      steps.current = next
      setCan({ undo: next.done.length > 0, redo: next.undone.length > 0 })
      keeper.edit(edit)
    },
    [keeper],
  )
  const go = useCallback(
    (edit: SheetEdit) => move(edit, { done: [...steps.current.done, edit], undone: [] }),
    [move],
  )
  return {
    shots,
    isKept,
    canUndo: can.undo || shots.length > 0,
    canRedo: can.redo,
    put: useCallback(
      (records) =>
        go({ put: enter(records, keeper.shots(), { tab: tab.current, at: Date.now() }), taken: [] }),
      [go, keeper],
    ),
    remove: useCallback((shot) => go({ put: [], taken: [shot] }), [go]),
    undo: useCallback(() => {
      const { done, undone } = steps.current
      const newest = keeper.shots().at(-1)
      const last = done.at(-1) ?? (newest === undefined ? undefined : { put: [newest], taken: [] })
      if (last !== undefined) move(inverseOf(last), { done: done.slice(0, -1), undone: [...undone, last] })
    }, [move, keeper]),
    redo: useCallback(() => {
      const { done, undone } = steps.current
      const last = undone.at(-1)
      if (last !== undefined) move(last, { done: [...done, last], undone: undone.slice(0, -1) })
    }, [move]),
    clear: useCallback((learned) => move({ put: [], taken: learned }, NO_STEPS), [move]),
  }
}

function onOtherTab(changed: () => void): () => void {
  addEventListener('storage', changed)
  return () => removeEventListener('storage', changed)
}
