import { GROUND_CLASSES } from '#golf/course/ground.ts'
import { LIES } from '#golf/player/player.ts'
import { applyEdit, type EnteredShot, type HoleFinish, type SheetEdit } from './shot-sheet.ts'

/** The sheet of one player, kept in the browser until it is learned from. */
export interface ShotKeeper {
  /** The same list until something changes. */
  shots(): readonly EnteredShot[]
  edit(edit: SheetEdit): void
  /** False while the browser would not keep the last edits: they are in this tab alone. */
  isKept(): boolean
  /** Tells of every change, those of other tabs as well; returns how to end that. */
  listen(onChange: () => void): () => void
}

/** The parts of the browser that are used. */
export interface KeeperParts {
  readonly storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>
  /** Calls back when another tab has changed the storage. */
  readonly onOtherTab: (changed: () => void) => () => void
}

/**
 * Keeps the shots of a player. Every edit is laid on what the storage holds at that moment, so that two tabs with one
 * player add to each other; what the storage refuses is laid on it again with the next edit.
 */
export function shotKeeper(playerId: string, { storage, onOtherTab }: KeeperParts): ShotKeeper {
  const key = `marram.shots.${playerId}`
  const listeners = new Set<() => void>()
  let refused: readonly SheetEdit[] = []
  let shots = read()

  function read(): readonly EnteredShot[] {
    return refused.reduce(applyEdit, parseShots(textOf(storage, key)))
  }

  function tell(): void {
    for (const listener of listeners) listener()
  }

  return {
    shots: () => shots,
    isKept: () => refused.length === 0,
    edit(edit) {
      shots = applyEdit(read(), edit)
      refused = write(storage, key, shots) ? [] : [...refused, edit]
      tell()
    },
    listen(onChange) {
      listeners.add(onChange)
      const end = onOtherTab(() => {
        shots = read()
        onChange()
      })
      return () => {
        listeners.delete(onChange)
        end()
      }
    },
  }
}

function write(storage: KeeperParts['storage'], key: string, shots: readonly EnteredShot[]): boolean {
  try {
    // Once all is learned, nothing of the pupil stays in the browser.
    if (shots.length === 0) storage.removeItem(key)
    else storage.setItem(key, JSON.stringify(shots))
    return true
  } catch {
    return false
  }
}

function textOf(storage: KeeperParts['storage'], key: string): string {
  try {
    return storage.getItem(key) ?? '[]'
  } catch {
    return '[]'
  }
}

/** What an older page kept may have another shape: a shot that is none is left out. */
function parseShots(text: string): readonly EnteredShot[] {
  try {
    const kept: unknown = JSON.parse(text)
    return Array.isArray(kept) ? kept.filter(isShot) : []
  } catch {
    return []
  }
}

function isShot(kept: unknown): kept is EnteredShot {
  if (typeof kept !== 'object' || kept === null) return false
  const shot = kept as Readonly<Record<string, unknown>>
  const isLength = (value: unknown): boolean => value === null || Number.isFinite(value)
  return (
    typeof shot.id === 'string' &&
    Number.isFinite(shot.order) &&
    typeof shot.club === 'string' &&
    (shot.date === null || typeof shot.date === 'string') &&
    (shot.lie === null || LIES.some((lie) => lie === shot.lie)) &&
    [shot.carryMetres, shot.totalMetres, shot.offlineMetres].every(isLength) &&
    (shot.strike === null || shot.strike === 'good' || shot.strike === 'mishit') &&
    (shot.finish === undefined || isFinish(shot.finish))
  )
}

function isFinish(kept: unknown): kept is HoleFinish {
  if (typeof kept !== 'object' || kept === null) return false
  const { courseId, holeRef, at, ground } = kept as Readonly<Record<string, unknown>>
  return (
    typeof courseId === 'string' &&
    typeof holeRef === 'string' &&
    Array.isArray(at) &&
    at.length === 2 &&
    at.every(Number.isFinite) &&
    GROUND_CLASSES.some((one) => one === ground)
  )
}
