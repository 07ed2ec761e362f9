import type { Lie } from '#golf/player/player.ts'
import { actionHeading, actionOf, actionShot } from './actions.ts'
import type { HoleModel } from './hole-model.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { groundOf } from './places.ts'
import { KEPT_ACTIONS } from './settings.ts'

/**
 * Actions kept by a neighbouring problem, put right for this ground: each is played from the lie that its state has
 * here, and a state that is new takes over the actions of the nearest old one.
 */
export function keptHere(model: HoleModel, old: Int32Array): Int32Array {
  const { places, states } = model
  const kept = Int32Array.from(old)
  for (const state of states.order) {
    const from = nearestKept(model, old, state)
    const lie = lieOfGround(groundOf(places, state)) as Lie
    for (let slot = 0; slot < KEPT_ACTIONS; slot++) {
      const action = from < 0 ? -1 : (old[from * KEPT_ACTIONS + slot] as number)
      kept[state * KEPT_ACTIONS + slot] =
        action < 0 ? -1 : actionOf(actionShot(action), lie, actionHeading(action))
    }
  }
  return kept
}

/** The state itself, or the nearest cell in its row or column that kept actions; −1 when there is none. */
function nearestKept(model: HoleModel, kept: Int32Array, state: number): number {
  const { columns, rows } = model.places.coarse
  const row = Math.floor(state / columns)
  const column = state - row * columns
  for (let away = 0; away < Math.max(columns, rows); away++)
    for (const [atColumn, atRow] of [
      [column - away, row],
      [column + away, row],
      [column, row - away],
      [column, row + away],
    ] as const) {
      if (atColumn < 0 || atRow < 0 || atColumn >= columns || atRow >= rows) continue
      const cell = atRow * columns + atColumn
      if ((kept[cell * KEPT_ACTIONS] as number) >= 0) return cell
    }
  return -1
}
