import type { HoleGround } from './hole-model.ts'
import { OUTCOME_KINDS } from './outcome.ts'
import { type RestTable, restAt } from './rest-table.ts'
import { outcomeAt, type ShotTable } from './shot-table.ts'
import { leftOf, type SlantTable, slotOf } from './slant-table.ts'

/** What becomes of the balls of one stroke: each outcome once, with its chance; chances add up to 1. */
export interface CellOutcomes {
  readonly outcome: Int32Array
  readonly weight: Float64Array
}

/** Outcomes are laid one stroke after another into pieces of memory of so many. */
const PIECE = 1 << 14

/** Gathers the outcomes of strokes from the middles of coarse cells; it keeps its scratch between calls. */
export function cellOutcomes({
  places,
}: Pick<HoleGround, 'places'>): (table: ShotTable, cell: number) => CellOutcomes {
  const { columns, rows } = places.coarse
  const { fine, finePerCoarse, finePlace, isNearPin } = places
  let outcomes = new Int32Array(0)
  let weights = new Float64Array(0)
  let from = 0
  let count = 0
  /** By outcome: where it stood when it was last found, which need not be in the present stroke. */
  const stood = new Int32Array(places.count * OUTCOME_KINDS)

  function add(outcome: number, chance: number): void {
    if (chance === 0) return
    const before = stood[outcome] as number
    if (before >= from && before < count && outcomes[before] === outcome) {
      weights[before] = (weights[before] as number) + chance
      return
    }
    if (count === outcomes.length) makeRoom()
    stood[outcome] = count
    outcomes[count] = outcome
    weights[count] = chance
    count += 1
  }

  /** A new piece of memory, to which the present stroke moves. */
  function makeRoom(): void {
    const size = Math.max(PIECE, 2 * (count - from))
    const [nextOutcomes, nextWeights] = [new Int32Array(size), new Float64Array(size)]
    nextOutcomes.set(outcomes.subarray(from, count))
    nextWeights.set(weights.subarray(from, count))
    for (let at = from; at < count; at++) stood[outcomes[at] as number] = at - from
    count -= from
    from = 0
    outcomes = nextOutcomes
    weights = nextWeights
  }

  /** Adds what a slant catches of balls that come by with a chance, and returns the chance that is left. */
  function passed(slant: SlantTable | null, cell: number, chance: number): number {
    if (slant === null) return chance
    const slot = slotOf(slant, cell)
    if (slot === 0) return chance
    const last = slant.first[slot] as number
    for (let at = slant.first[slot - 1] as number; at < last; at++)
      add(restAt(places, slant.outcome, at), chance * (slant.chance[at] as number))
    return chance * leftOf(slant, slot - 1)
  }

  return (table, cell) => {
    const { cellDx, cellDy, fineDx, fineDy, up, down, rest, weight } = table
    const row = Math.floor(cell / columns)
    const column = cell - row * columns
    const [firstFineColumn, firstFineRow] = [finePerCoarse * column, finePerCoarse * row]
    from = count
    for (let k = 0; k < weight.length; k++) {
      const toColumn = column + (cellDx[k] as number)
      const toRow = row + (cellDy[k] as number)
      const inColumn = toColumn < 0 ? 0 : toColumn >= columns ? columns - 1 : toColumn
      const inRow = toRow < 0 ? 0 : toRow >= rows ? rows - 1 : toRow
      const coarse = inRow * columns + inColumn
      const flown = passed(up[k] as SlantTable | null, cell, weight[k] as number)
      const left = passed(down[k] as SlantTable | null, coarse, flown)
      if (isNearPin[coarse] === 0) {
        add(restAt(places, rest[k] as RestTable, coarse), left)
        continue
      }
      const fineColumn = firstFineColumn + (fineDx[k] as number)
      const fineRow = firstFineRow + (fineDy[k] as number)
      const isFine = fineColumn >= 0 && fineColumn < fine.columns && fineRow >= 0 && fineRow < fine.rows
      const place = isFine ? (finePlace[fineRow * fine.columns + fineColumn] as number) : -1
      add(outcomeAt(places, table, k, place < 0 ? coarse : place), left)
    }
    return { outcome: outcomes.subarray(from, count), weight: weights.subarray(from, count) }
  }
}
