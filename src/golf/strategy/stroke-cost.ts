import type { CrownRays } from './crown-rays.ts'
import type { HoleGround } from './hole-model.ts'
import type { OutcomeCosts } from './outcome-costs.ts'
import { emptyPassage, type Passage, passCrownsInto } from './pass-crowns.ts'
import { placeAt } from './places.ts'
import type { RestTable } from './rest-tables.ts'
import type { ShotTable } from './shot-table.ts'
import type { StrikePaths } from './strike-paths.ts'
import type { StrokeEnds } from './stroke-ends.ts'

/** From this share on every ball goes back: the shot never ends the hole. Below one by more than the rounding of a sum of weights. */
const SURELY_BACK = 1 - 1e-9

/**
 * Expected strokes to hole out of playing one shot from the middle of a coarse cell and the best plan after it.
 * Balls that go back are replayed in closed form: with chance `p` of going back and the rest costing `S` together,
 * the stroke costs (1 + S + p) / (1 − p). `here` is the present value of the state: relief dearer than replaying
 * from here is not taken.
 */
export function costFromCell(
  ground: Pick<HoleGround, 'places' | 'costs' | 'canopy'>,
  table: ShotTable,
  cell: number,
  values: Float64Array,
  here: number,
): number {
  const { places, costs } = ground
  const { fromCells } = ground.canopy
  const { coarse, isNearPin, greenIndex } = places
  const { columns, rows } = coarse
  const { cellDx, cellDy, dx, dy, weight, rest, restOnGreen, paths } = table
  const { isSpecial, isKnown, kept, returned, relief, reliefInKept, relieved } = costs
  const row = Math.floor(cell / columns)
  const column = cell - row * columns
  const x = places.x[cell] as number
  const y = places.y[cell] as number
  const { known } = fromCells
  const firstRay = cell * fromCells.headings
  passed.sum = 0
  passed.back = 0
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
    if (paths !== null) {
      const heading = paths.cellHeading[k] as number
      const ray = (known[firstRay + heading] as number) - 1
      if (
        ray !== 0 &&
        (ray < 0 || isInTheWay(fromCells, ray, paths, k)) &&
        isPassedThroughCrowns(ground, table, paths, cell, k, ray, outcome, values, here)
      )
        continue
    }
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
  sum += passed.sum
  back += passed.back
  return back < SURELY_BACK ? (1 + sum + back) / (1 - back) : Number.POSITIVE_INFINITY
}

/**
 * Adds up in {@link passed} what a strike costs that may meet crowns on its way: caught balls drop where they are caught,
 * the rest come to the landing. `false`, and nothing added, when none is in its way. `ray`: −1 = not yet followed.
 */
function isPassedThroughCrowns(
  ground: Pick<HoleGround, 'places' | 'costs' | 'canopy'>,
  table: ShotTable,
  paths: StrikePaths,
  cell: number,
  k: number,
  ray: number,
  landed: number,
  values: Float64Array,
  here: number,
): boolean {
  const { places, costs, canopy } = ground
  const rays = canopy.fromCells
  const followed = ray < 0 ? rays.rayAt(cell, paths.cellHeading[k] as number) : ray
  if (followed === 0) return false
  const left = passCrownsInto(passage, canopy.crowns, rays, followed, paths, k)
  if (passage.count === 0) return false
  const weight = table.weight[k] as number
  const x = places.x[cell] as number
  const y = places.y[cell] as number
  for (let piece = 0; piece < passage.count; piece++) {
    const at = passage.at[piece] as number
    const place = placeAt(places, x + at * (table.dx[k] as number), y + at * (table.dy[k] as number))
    const outcome = (paths.falls[k] as RestTable)[place] as number
    count(passed, costs, outcome, weight * (passage.chance[piece] as number), values, here)
  }
  // Nothing times what never ends is not a number.
  if (left > 0) count(passed, costs, landed, weight * left, values, here)
  return true
}

/** What strikes past crowns have cost in the present sum. */
const passed: Tally = { sum: 0, back: 0 }

/** Whether anything on a ray may be in a strike's way: `false` when it lands short of it all or is above the highest all along. */
function isInTheWay(rays: CrownRays, ray: number, paths: StrikePaths, k: number): boolean {
  const reach = paths.reach[k] as number
  const begins = rays.begins[ray] as number
  if (begins >= reach) return false
  const step = Math.ceil((rays.tops[ray] as number) * (paths.clearSteps[k] as number))
  const from = reach * (paths.clearFrom[step] ?? 1)
  const to = reach * (paths.clearTo[step] ?? 1)
  return from >= to || begins < from || Math.min(reach, rays.ends[ray] as number) > to
}

interface Tally {
  sum: number
  back: number
}

const passage: Passage = emptyPassage()

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
