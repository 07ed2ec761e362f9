import { coarseLanding, restOf } from './cell-landing.ts'
import type { HoleGround } from './hole-model.ts'
import { OUTCOME_KINDS } from './outcome.ts'
import { restAt } from './rest-table.ts'
import type { ShotTable } from './shot-table.ts'
import { leftOf, type SlantTable, slotOf } from './slant-table.ts'

/** What becomes of the balls of one stroke: each outcome once, with its chance; chances add up to 1. */
export interface CellOutcomes {
  readonly outcome: Int32Array
  readonly weight: Float64Array
}

/** Gathers the outcomes of strokes from the middles of coarse cells; it keeps its scratch between calls. */
export function cellOutcomes({
  places,
}: Pick<HoleGround, 'places'>): (table: ShotTable, cell: number) => CellOutcomes {
  const chances = new Float64Array(places.count * OUTCOME_KINDS)
  const found = new Int32Array(places.count * OUTCOME_KINDS)
  let count = 0
  const add = (outcome: number, chance: number): void => {
    if (chance === 0) return
    const before = chances[outcome] as number
    if (before === 0) found[count++] = outcome
    chances[outcome] = before + chance
  }
  const caught = (slant: SlantTable | null, cell: number, chance: number): number => {
    const slot = slant === null ? 0 : slotOf(slant, cell)
    if (slant === null || slot === 0) return chance
    for (let at = slant.first[slot - 1] as number; at < (slant.first[slot] as number); at++)
      add(restAt(places, slant.outcome, at), chance * (slant.chance[at] as number))
    return chance * leftOf(slant, slot - 1)
  }
  return (table, cell) => {
    const row = Math.floor(cell / places.coarse.columns)
    const column = cell - row * places.coarse.columns
    count = 0
    for (let k = 0; k < table.weight.length; k++) {
      const coarse = coarseLanding(places, table, k, column, row)
      const flown = caught(table.up[k] as SlantTable | null, cell, table.weight[k] as number)
      const left = caught(table.down[k] as SlantTable | null, coarse, flown)
      add(restOf(places, table, k, column, row, coarse), left)
    }
    const outcome = found.slice(0, count)
    const weight = new Float64Array(count)
    for (let at = 0; at < count; at++) {
      const one = outcome[at] as number
      weight[at] = chances[one] as number
      chances[one] = 0
    }
    return { outcome, weight }
  }
}
