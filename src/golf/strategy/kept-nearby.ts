import { actionHeading, actionLie, actionOf, actionShot } from './actions.ts'
import type { HoleModel } from './hole-model.ts'
import { type NearbyStart, shotName } from './nearby-start.ts'
import { KEPT_ACTIONS } from './settings.ts'
import type { Shot } from './shots.ts'

/** What a start knows of the places of another hole, player or day. */
export interface CarriedOver {
  /** As a problem keeps them; −1 where nothing is known. */
  readonly kept: Int32Array
  /** The old place that lies where each coarse cell lies now. */
  readonly from: Int32Array
}

/** Finds the kept actions of a start again: cells by where they lie, shots by their names. */
export function carriedOver(start: NearbyStart, model: HoleModel, shots: readonly Shot[]): CarriedOver {
  const { coarse, coarseCount, x, y } = model.places
  const { frame } = start
  const names = new Map(shots.map((shot, number) => [shotName(shot), number]))
  const numbers = start.shots.map((name) => names.get(name) ?? -1)
  const kept = new Int32Array(coarseCount * KEPT_ACTIONS).fill(-1)
  const from = new Int32Array(coarseCount)
  for (let cell = 0; cell < coarseCount; cell++) {
    const column = held(((x[cell] as number) - frame.originX) / coarse.resolution, frame.columns)
    const row = held(((y[cell] as number) - frame.originY) / coarse.resolution, frame.rows)
    const old = row * frame.columns + column
    from[cell] = old
    let slot = cell * KEPT_ACTIONS
    for (let at = old * KEPT_ACTIONS; at < (old + 1) * KEPT_ACTIONS; at++) {
      const action = start.kept[at] as number
      const shot = action < 0 ? -1 : (numbers[actionShot(action)] as number)
      if (shot >= 0) kept[slot++] = actionOf(shot, actionLie(action), actionHeading(action))
    }
  }
  return { kept, from }
}

function held(index: number, size: number): number {
  return Math.min(size - 1, Math.max(0, Math.round(index)))
}
