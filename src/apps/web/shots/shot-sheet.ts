import type { Ground } from '#golf/course/ground.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import type { Point } from '#numbers/geometry/point.ts'

/** Where a shot on a hole stopped. */
export interface HoleFinish {
  readonly courseId: string
  readonly holeRef: string
  /** In the frame of the hole, metres. */
  readonly at: Point
  readonly ground: Ground
}

/** A shot to put down: the record, and where it stopped if that was on a hole. */
export interface NewShot extends ShotRecord {
  readonly finish?: HoleFinish
}

/** A shot that was put down on the desk and is not learned from yet. */
export interface EnteredShot extends NewShot {
  /** No two shots of a browser have the same. */
  readonly id: string
  /** Shots stand in the order of this number. */
  readonly order: number
}

/** One step of undo: shots that were put down and shots that were taken away. */
export interface SheetEdit {
  readonly put: readonly EnteredShot[]
  readonly taken: readonly EnteredShot[]
}

/** The shots after an edit. Only the shots it names are touched: edits of two tabs go together in any order. */
export function applyEdit(shots: readonly EnteredShot[], { put, taken }: SheetEdit): readonly EnteredShot[] {
  const touched = new Set([...put, ...taken].map(({ id }) => id))
  const rest = shots.filter(({ id }) => !touched.has(id))
  return [...rest, ...put].sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
}

/** What takes an edit back. */
export function inverseOf({ put, taken }: SheetEdit): SheetEdit {
  return { put: taken, taken: put }
}

/** Records as shots of a sheet, after all that stand on it; `mark` tells the tab and the moment. */
export function enter(
  records: readonly NewShot[],
  shots: readonly EnteredShot[],
  mark: { readonly tab: string; readonly at: number },
): readonly EnteredShot[] {
  const first = Math.max(mark.at, (shots.at(-1)?.order ?? 0) + 1)
  return records.map((record, index) => ({
    ...record,
    order: first + index,
    id: `${first + index}-${mark.tab}`,
  }))
}
