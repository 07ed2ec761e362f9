import type { OutcomeCosts } from './outcome-costs.ts'
import type { StrokeEnds } from './stroke-ends.ts'

/** From this share on every ball goes back: the shot never ends the hole. Below one by more than the rounding of a sum of weights. */
export const SURELY_BACK: number = 1 - 1e-9

/** What a stroke has cost so far. */
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
