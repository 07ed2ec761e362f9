import { type CellOutcomes, cellOutcomes } from './cell-outcomes.ts'
import type { HoleGround } from './hole-model.ts'
import type { OutcomeCosts } from './outcome-costs.ts'
import type { ShotTable } from './shot-table.ts'
import { returnedShare, SURELY_BACK } from './stroke-cost.ts'

/** One stroke from one cell, gathered: outcomes that simply cost the value of a place come first. */
export interface StrokeRow extends CellOutcomes {
  readonly plainCount: number
}

/** Gathers strokes into rows, which are weighed several times as fast as strike by strike. */
export function strokeRows(
  ground: Pick<HoleGround, 'places' | 'costs'>,
): (table: ShotTable, cell: number) => StrokeRow {
  const outcomesOf = cellOutcomes(ground)
  const { isSpecial } = ground.costs
  return (table, cell) => {
    const { outcome, weight } = outcomesOf(table, cell)
    let plainCount = 0
    for (let at = 0; at < outcome.length; at++) {
      if (isSpecial[outcome[at] as number] === 1) continue
      const [one, chance] = [outcome[at] as number, weight[at] as number]
      outcome[at] = outcome[plainCount] as number
      weight[at] = weight[plainCount] as number
      outcome[plainCount] = one
      weight[plainCount] = chance
      plainCount += 1
    }
    return { outcome, weight, plainCount }
  }
}

/**
 * Expected strokes to hole out of playing a gathered stroke and the best plan after it. Balls that go back are replayed in
 * closed form: with chance `p` of going back and the rest costing `S` together, the stroke costs (1 + S + p) / (1 − p).
 * `here` is the present value of the state: relief dearer than replaying from here is not taken. `isByTurns`: the replay is
 * a partner's and costs `here`, so the stroke costs 1 + S + p (1 + here).
 */
export function costOfRow(
  costs: OutcomeCosts,
  row: StrokeRow,
  values: Float64Array,
  here: number,
  isByTurns = false,
): number {
  const { outcome, weight, plainCount } = row
  let sum = 0
  let back = 0
  for (let at = 0; at < plainCount; at++)
    sum += (weight[at] as number) * (values[outcome[at] as number] as number)
  for (let at = plainCount; at < outcome.length; at++) {
    const one = outcome[at] as number
    const chance = weight[at] as number
    back += chance * returnedShare(costs, one, values, here)
    sum += chance * (costs.kept[one] as number)
    if ((costs.relief[one] as number) > 1 + here) sum -= chance * (costs.reliefInKept[one] as number)
  }
  // Nothing times what never ends is not a number.
  if (isByTurns) return back > 0 ? 1 + sum + back * (1 + here) : 1 + sum
  return back < SURELY_BACK ? (1 + sum + back) / (1 - back) : Number.POSITIVE_INFINITY
}
