import { roundHalfUp } from './round-half-up.ts'

/**
 * How many of the lowest score differentials count, and what is added, in tenths, by the number in the record.
 * Source: Rules of Handicapping 2024, Rule 5.2a and 5.2b; the adjustments at 4 and 5 scores from memory.
 */
const COUNTED: readonly (readonly [record: number, counted: number, adjustmentTenths: number])[] = [
  [20, 8, 0],
  [19, 7, 0],
  [17, 6, 0],
  [15, 5, 0],
  [12, 4, 0],
  [9, 3, 0],
  [7, 2, 0],
  [6, 2, -10],
  [5, 1, 0],
  [4, 1, -10],
  [3, 1, -20],
]

/** Rule 5.3, tenths. */
const HIGHEST_INDEX = 540
/** Rule 5.8, tenths above the low index: beyond the first only half counts, and the second is never passed. */
const SOFT_CAP = 30
const HARD_CAP = 50

/**
 * The handicap index in tenths from the score differentials of a record in tenths, oldest first; `null` with fewer
 * than three. With the player's low index of the last year, the caps of Rule 5.8 hold it down (they need 20 scores).
 * @public the first profile from a pupil's score record will use it.
 */
export function handicapIndexTenths(
  differentialsTenths: readonly number[],
  lowIndexTenths: number | null = null,
): number | null {
  const latest = differentialsTenths.slice(-20)
  const row = COUNTED.find(([record]) => latest.length >= record)
  if (!row) return null
  const [, counted, adjustment] = row
  const sum = [...latest]
    .sort((a, b) => a - b)
    .slice(0, counted)
    .reduce((total, differential) => total + differential, 0)
  const index = roundHalfUp(sum, counted) + adjustment
  const isCapped = lowIndexTenths !== null && latest.length === 20
  return Math.min(HIGHEST_INDEX, isCapped ? cappedIndexTenths(index, lowIndexTenths) : index)
}

/** An index in tenths held down by the soft and the hard cap above the low index. */
export function cappedIndexTenths(indexTenths: number, lowIndexTenths: number): number {
  const over = indexTenths - lowIndexTenths - SOFT_CAP
  if (over <= 0) return indexTenths
  return lowIndexTenths + Math.min(HARD_CAP, SOFT_CAP + roundHalfUp(over, 2))
}
