import type { Outcome } from './outcome.ts'
import type { Places } from './places.ts'
import { knownRests, type RestTable } from './rest-table.ts'

/**
 * What catches balls on one slant along one heading, for every coarse cell that it starts from. A wood has thousands of
 * these tables: they hold a bit for a cell, and no more for one where nothing is in the way.
 */
export interface SlantTable {
  /** By cell, a bit of a word: 1 where something is in the way. */
  readonly isMet: Int32Array
  /** By word: how many cells before it are met. */
  readonly before: Int32Array
  /** Catches of the met cell of number `n` are `first[n]` to `first[n + 1] - 1`: what becomes of the ball, and with which chance. */
  readonly first: Int32Array
  readonly outcome: RestTable
  readonly chance: Float32Array
}

/** One catch of the balls from a cell. */
export interface Catch {
  readonly from: number
  readonly outcome: Outcome
  readonly chance: number
}

/** Catches by the cell that they are seen from, each cell's in the order of the ball's way. */
export function slantTable(places: Places, catches: readonly Catch[]): SlantTable {
  const words = Math.ceil(places.coarseCount / WORD_BITS)
  const isMet = new Int32Array(words)
  const before = new Int32Array(words)
  for (const { from } of catches) isMet[from >> 5] = (isMet[from >> 5] as number) | (1 << (from & 31))
  let met = 0
  for (let word = 0; word < words; word++) {
    before[word] = met
    met += bitCount(isMet[word] as number)
  }
  const first = new Int32Array(met + 1)
  const numbers = Int32Array.from(catches, ({ from }) => slotOf({ isMet, before }, from) - 1)
  for (const number of numbers) first[number + 1] = (first[number + 1] as number) + 1
  for (let number = 1; number <= met; number++)
    first[number] = (first[number] as number) + (first[number - 1] as number)
  const next = first.slice()
  const sorted = new Array<Catch>(catches.length)
  for (const [index, one] of catches.entries()) {
    const number = numbers[index] as number
    const at = next[number] as number
    next[number] = at + 1
    sorted[at] = one
  }
  return {
    isMet,
    before,
    first,
    outcome: knownRests(
      places,
      Int32Array.from(sorted, ({ outcome }) => outcome),
    ),
    chance: Float32Array.from(sorted, ({ chance }) => chance),
  }
}

/** Bytes of a table's numbers. */
export function slantTableBytes({ isMet, before, first, outcome, chance }: SlantTable): number {
  return [isMet, before, first, outcome.words, chance].reduce((sum, { byteLength }) => sum + byteLength, 0)
}

/** 0 where nothing is in the way of balls from a cell, else one more than the cell's number among those that are met. */
export function slotOf({ isMet, before }: Pick<SlantTable, 'isMet' | 'before'>, cell: number): number {
  const word = isMet[cell >> 5] as number
  const bit = 1 << (cell & 31)
  return (word & bit) === 0 ? 0 : (before[cell >> 5] as number) + bitCount(word & (bit - 1)) + 1
}

/** The met cells by their number. */
export function metCells(table: SlantTable): Int32Array {
  const cells = new Int32Array(table.first.length - 1)
  let number = 0
  for (let cell = 0; number < cells.length; cell++) if (slotOf(table, cell) > 0) cells[number++] = cell
  return cells
}

/** Chance that nothing catches a ball from the met cell of a number. What the catches leave of 1, to the last digit: their chances are rounded. */
export function leftOf({ first, chance }: SlantTable, number: number): number {
  let left = 1
  for (let at = first[number] as number; at < (first[number + 1] as number); at++)
    left -= chance[at] as number
  return left
}

const WORD_BITS = 32

/** Bits of a word that are set, counted in pairs, fours and bytes. */
function bitCount(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555)
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333)
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24
}
