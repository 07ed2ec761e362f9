import { type Outcome, outcomeKind, outcomeOf, outcomePlace } from './outcome.ts'
import type { Places } from './places.ts'

/**
 * For each place where a ball may land: what becomes of it. One table holds for one run and one heading. Tables are by far
 * the most that is kept of a hole, so an outcome takes a half word, where places can be numbered in one, and two bits for
 * its kind: each eight outcomes are nine numbers, their kinds and then their places. {@link restAt} reads them.
 */
export type RestTable = Uint16Array | Int32Array

const GROUP = 8
const STRIDE = GROUP + 1
const KIND_BITS = 2
const KIND_MASK = 3
/** One more than the largest number in a half word. */
const HALF_WORD = 65536

/** A table of so many outcomes. */
export function restTable(places: Places, size: number, outcomeFrom: (index: number) => Outcome): RestTable {
  const length = Math.ceil(size / GROUP) * STRIDE
  const table = places.count <= HALF_WORD ? new Uint16Array(length) : new Int32Array(length)
  for (let index = 0; index < size; index++) {
    const outcome = outcomeFrom(index)
    const [first, within] = [STRIDE * (index >> 3), index & (GROUP - 1)]
    table[first] = (table[first] as number) | (outcomeKind(places, outcome) << (KIND_BITS * within))
    table[first + 1 + within] = outcomePlace(places, outcome)
  }
  return table
}

/** What becomes of a ball that lands in a place, or on the green in the place of a number. */
export function restAt(places: Places, table: RestTable, index: number): Outcome {
  const first = STRIDE * (index >> 3)
  const within = index & (GROUP - 1)
  const kind = ((table[first] as number) >> (KIND_BITS * within)) & KIND_MASK
  return outcomeOf(places, kind, table[first + 1 + within] as number)
}
