import { actionHeading, actionLie, actionShot } from '../actions.ts'
import { type CellOutcomes, cellOutcomes } from '../cell-outcomes.ts'
import type { HoleModel } from '../hole-model.ts'
import { headingOf } from '../lines-of-play.ts'
import { type ShotTable, shotTable } from '../shot-table.ts'
import type { Shot } from '../shots.ts'
import { strikesOf } from '../strikes.ts'

/** Strokes from the middles of coarse cells. */
export interface CellStrokes {
  /** The table of an action, by its number. */
  tableOf(action: number): ShotTable
  outcomes(state: number, table: ShotTable): CellOutcomes
}

/** Lays the actions of a hole with some number of strikes; a shot's table is laid once for all cells. */
export function cellStrokes(
  model: HoleModel,
  shots: readonly Shot[],
  quadrature: { readonly good: number; readonly mishit: number },
): CellStrokes {
  const strikes = strikesOf(quadrature)
  const tables = new Map<number, ShotTable>()
  const tableOf = (action: number): ShotTable => {
    const made =
      tables.get(action) ??
      shotTable({
        shot: shots[actionShot(action)] as Shot,
        lie: actionLie(action),
        heading: headingOf(actionHeading(action)),
        player: model.player,
        flights: model.flights,
        today: model.today,
        strikes,
        rest: model.rest,
        places: model.places,
        growth: model.slants,
      })
    tables.set(action, made)
    return made
  }
  const outcomesOf = cellOutcomes(model)
  return { tableOf, outcomes: (state, table) => outcomesOf(table, state) }
}
