import type { OutcomeCosts } from './outcome-costs.ts'
import { type Places, placeAt } from './places.ts'
import { outcomeAt, type ShotTable } from './shot-table.ts'

/** From this share on every ball goes back: the shot never ends the hole. Below one by more than the rounding of a sum of weights. */
const SURELY_BACK = 1 - 1e-9

/**
 * Expected strokes to hole out of playing one shot from the middle of a coarse cell and the best plan after it.
 * Balls that go back are replayed in closed form: with chance `p` of going back and the rest costing `S` together,
 * the stroke costs (1 + S + p) / (1 − p). `here` is the present value of the state: relief dearer than replaying
 * from here is not taken.
 */
export function costFromCell(
  places: Places,
  costs: OutcomeCosts,
  table: ShotTable,
  cell: number,
  values: Float64Array,
  here: number,
): number {
  const { coarse, isNearPin, greenIndex } = places
  const { columns, rows } = coarse
  const { cellDx, cellDy, dx, dy, weight, rest, restOnGreen } = table
  const { isSpecial, isKnown, kept, returned, relief, reliefInKept, relieved } = costs
  const row = Math.floor(cell / columns)
  const column = cell - row * columns
  const x = places.x[cell] as number
  const y = places.y[cell] as number
  let sum = 0
  let back = 0
  for (let k = 0; k < weight.length; k++) {
    let atColumn = column + (cellDx[k] as number)
    let atRow = row + (cellDy[k] as number)
    atColumn = atColumn < 0 ? 0 : atColumn >= columns ? columns - 1 : atColumn
    atRow = atRow < 0 ? 0 : atRow >= rows ? rows - 1 : atRow
    let place = atRow * columns + atColumn
    let onGreen = -1
    if (isNearPin[place] === 1) {
      place = placeAt(places, x + (dx[k] as number), y + (dy[k] as number))
      onGreen = greenIndex[place] as number
    }
    const outcome = (
      onGreen < 0 ? (rest[k] as Int32Array)[place] : (restOnGreen[k] as Int32Array)[onGreen]
    ) as number
    const chance = weight[k] as number
    if (isSpecial[outcome] === 0) {
      sum += chance * (values[outcome] as number)
      continue
    }
    if (isKnown[outcome] === 0) costs.workOut(outcome, values)
    sum += chance * (kept[outcome] as number)
    back += chance * (returned[outcome] as number)
    if ((relief[outcome] as number) > 1 + here) {
      sum -= chance * (reliefInKept[outcome] as number)
      back += chance * (relieved[outcome] as number)
    }
  }
  return back < SURELY_BACK ? (1 + sum + back) / (1 - back) : Number.POSITIVE_INFINITY
}

/**
 * The same from any point of the hole frame, in its two parts: the expected cost of what is not replayed, the stroke
 * itself left out, and the share that goes back to where the stroke was made.
 */
export function strokeShares(
  places: Places,
  costs: OutcomeCosts,
  table: ShotTable,
  x: number,
  y: number,
  values: Float64Array,
  here: number,
): { readonly sum: number; readonly back: number } {
  const { dx, dy, weight } = table
  let sum = 0
  let back = 0
  for (let k = 0; k < weight.length; k++) {
    const place = placeAt(places, x + (dx[k] as number), y + (dy[k] as number))
    const outcome = outcomeAt(places, table, k, place)
    const chance = weight[k] as number
    if (costs.isSpecial[outcome] === 0) {
      sum += chance * (values[outcome] as number)
      continue
    }
    const returned = returnedShare(costs, outcome, values, here)
    const isReliefTaken = (costs.relief[outcome] as number) <= 1 + here
    back += chance * returned
    sum +=
      chance *
      ((costs.kept[outcome] as number) - (isReliefTaken ? 0 : (costs.reliefInKept[outcome] as number)))
  }
  return { sum, back }
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
