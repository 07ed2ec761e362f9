import { coarseLanding, restOf } from './cell-landing.ts'
import type { HoleGround } from './hole-model.ts'
import type { OutcomeCosts } from './outcome-costs.ts'
import type { Places } from './places.ts'
import { restAt } from './rest-table.ts'
import type { ShotTable } from './shot-table.ts'
import { leftOf, type SlantTable, slotOf } from './slant-table.ts'
import type { StrokeEnds } from './stroke-ends.ts'

/** From this share on every ball goes back: the shot never ends the hole. Below one by more than the rounding of a sum of weights. */
export const SURELY_BACK: number = 1 - 1e-9

/**
 * Expected strokes to hole out of playing one shot from the middle of a coarse cell and the best plan after it.
 * Balls that go back are replayed in closed form: with chance `p` of going back and the rest costing `S` together,
 * the stroke costs (1 + S + p) / (1 − p). `here` is the present value of the state: relief dearer than replaying
 * from here is not taken. `isByTurns`: the replay is a partner's and costs `here`, so the stroke costs 1 + S + p (1 + here).
 */
export function costFromCell(
  ground: Pick<HoleGround, 'places' | 'costs'>,
  table: ShotTable,
  cell: number,
  values: Float64Array,
  here: number,
  isByTurns = false,
): number {
  const { places, costs } = ground
  const { columns } = places.coarse
  const { weight, up, down } = table
  const row = Math.floor(cell / columns)
  const column = cell - row * columns
  tally.sum = 0
  tally.back = 0
  for (let k = 0; k < weight.length; k++) {
    const coarse = coarseLanding(places, table, k, column, row)
    const rising = up[k] as SlantTable | null
    let left = weight[k] as number
    if (rising !== null) left = countCaught(places, rising, cell, left, costs, values, here)
    const falling = down[k] as SlantTable | null
    if (falling !== null) left = countCaught(places, falling, coarse, left, costs, values, here)
    // Nothing times what never ends is not a number.
    if (left > 0) count(tally, costs, restOf(places, table, k, column, row, coarse), left, values, here)
  }
  const { sum, back } = tally
  // Nothing times what never ends is not a number.
  if (isByTurns) return back > 0 ? 1 + sum + back * (1 + here) : 1 + sum
  return back < SURELY_BACK ? (1 + sum + back) / (1 - back) : Number.POSITIVE_INFINITY
}

/** Counts what a slant catches of balls that come by with a chance, and returns the chance that is left. */
function countCaught(
  places: Places,
  slant: SlantTable,
  cell: number,
  chance: number,
  costs: OutcomeCosts,
  values: Float64Array,
  here: number,
): number {
  const slot = slotOf(slant, cell)
  if (slot === 0) return chance
  const last = slant.first[slot] as number
  for (let at = slant.first[slot - 1] as number; at < last; at++)
    count(
      tally,
      costs,
      restAt(places, slant.outcome, at),
      chance * (slant.chance[at] as number),
      values,
      here,
    )
  return chance * leftOf(slant, slot - 1)
}

/** What the present stroke has cost so far. */
const tally: Tally = { sum: 0, back: 0 }

interface Tally {
  sum: number
  back: number
}

/** Adds an outcome to what is not replayed and what goes back. */
function count(
  tally: Tally,
  costs: OutcomeCosts,
  outcome: number,
  chance: number,
  values: Float64Array,
  here: number,
): void {
  if (costs.isSpecial[outcome] === 0) {
    tally.sum += chance * (values[outcome] as number)
    return
  }
  const returned = returnedShare(costs, outcome, values, here)
  const isReliefTaken = (costs.relief[outcome] as number) <= 1 + here
  tally.back += chance * returned
  tally.sum +=
    chance * ((costs.kept[outcome] as number) - (isReliefTaken ? 0 : (costs.reliefInKept[outcome] as number)))
}

/**
 * The same for a stroke whose ends are known, in its two parts: the expected cost of what is not replayed, the stroke
 * itself left out, and the share that goes back to where the stroke was made.
 */
export function strokeShares(
  costs: OutcomeCosts,
  ends: StrokeEnds,
  values: Float64Array,
  here: number,
): { readonly sum: number; readonly back: number } {
  const tally: Tally = { sum: 0, back: 0 }
  for (let end = 0; end < ends.count; end++)
    count(tally, costs, ends.outcome[end] as number, ends.weight[end] as number, values, here)
  return tally
}

/** Share of an outcome that is replayed from where the stroke was made. */
export function returnedShare(
  costs: OutcomeCosts,
  outcome: number,
  values: Float64Array,
  here: number,
): number {
  if (costs.isKnown[outcome] === 0) costs.workOut(outcome, values)
  const goesBack = (costs.relief[outcome] as number) > 1 + here ? (costs.relieved[outcome] as number) : 0
  return (costs.returned[outcome] as number) + goesBack
}

/** What an outcome costs from here on when what goes back is played again from `here`. */
export function outcomeCost(
  costs: OutcomeCosts,
  outcome: number,
  values: Float64Array,
  here: number,
): number {
  if (costs.isSpecial[outcome] === 0) return values[outcome] as number
  const back = returnedShare(costs, outcome, values, here)
  const isReliefTaken = (costs.relief[outcome] as number) <= 1 + here
  const kept = (costs.kept[outcome] as number) - (isReliefTaken ? 0 : (costs.reliefInKept[outcome] as number))
  return kept + back * (1 + here)
}
