import { type Outcome, outcomeKind, outcomeOf, outcomePlace } from './outcome.ts'
import type { Places } from './places.ts'

/**
 * For each place where a ball may land: what becomes of it, worked out when it is first asked for. One table holds for
 * one run and one heading. Tables are by far the most that is kept of a hole, so an outcome takes a half word, where
 * places can be numbered in one, and two bits for its kind: each eight outcomes are nine numbers, their kinds and then
 * their places. {@link restAt} reads them.
 */
export interface RestTable {
  readonly words: Uint16Array | Int32Array
  /** What becomes of a ball, followed and not looked up. */
  readonly follow: (index: number) => Outcome
  /** The same, and what becomes of it with other runs of its way is kept in their tables: for whoever asks for every ball. */
  readonly followAll: (index: number) => Outcome
}

const GROUP = 8
const STRIDE = GROUP + 1
const KIND_BITS = 2
const KIND_MASK = 3
/** The largest number in a half word. */
const HALF_WORD = 65535

/** A table of so many outcomes. */
export function restTable(
  places: Places,
  size: number,
  follow: (index: number) => Outcome,
  followAll: (index: number) => Outcome = follow,
): RestTable {
  const length = Math.ceil(size / GROUP) * STRIDE
  const words = places.count <= HALF_WORD ? new Uint16Array(length) : new Int32Array(length)
  // One more than the last place stands for what is not worked out yet.
  words.fill(places.count)
  for (let first = 0; first < length; first += STRIDE) words[first] = 0
  return { words, follow, followAll }
}

/** A table of outcomes that are all known. It holds on to nothing but them. */
export function knownRests(places: Places, outcomes: Int32Array): RestTable {
  const table = restTable(places, outcomes.length, (index) => outcomes[index] as number)
  for (let index = 0; index < outcomes.length; index++) restAt(places, table, index)
  return { words: table.words, follow: beyond, followAll: beyond }
}

function beyond(index: number): never {
  throw new RangeError(`no outcome has the number ${index}`)
}

/** What becomes of a ball that lands in a place, or on the green in the place of a number. */
export function restAt(places: Places, table: RestTable, index: number): Outcome {
  const { words } = table
  const first = STRIDE * (index >> 3)
  const within = index & (GROUP - 1)
  const place = words[first + 1 + within] as number
  if (place === places.count) return kept(places, table, index, table.follow(index))
  const kind = ((words[first] as number) >> (KIND_BITS * within)) & KIND_MASK
  return outcomeOf(places, kind, place)
}

/** Whether it is worked out already what becomes of a ball. */
export function isRestKnown(places: Places, { words }: RestTable, index: number): boolean {
  return words[STRIDE * (index >> 3) + 1 + (index & (GROUP - 1))] !== places.count
}

/** Writes down what becomes of a ball of which that was not known. */
export function keepRest(places: Places, { words }: RestTable, index: number, outcome: Outcome): void {
  const first = STRIDE * (index >> 3)
  const within = index & (GROUP - 1)
  words[first] = (words[first] as number) | (outcomeKind(places, outcome) << (KIND_BITS * within))
  words[first + 1 + within] = outcomePlace(places, outcome)
}

/** Copies what becomes of the balls of the first `size` numbers: several times as fast as asking for each. */
export function copyRests(
  places: Places,
  table: RestTable,
  size: number,
  into: Int32Array,
  at: number,
): void {
  const { words } = table
  const { count } = places
  let first = 0
  for (let from = 0; from < size; from += GROUP, first += STRIDE) {
    let kinds = words[first] as number
    const until = Math.min(GROUP, size - from)
    for (let within = 0; within < until; within++) {
      const place = words[first + 1 + within] as number
      if (place === count) {
        const index = from + within
        into[at + index] = kept(places, table, index, table.followAll(index))
        kinds = words[first] as number
      } else into[at + from + within] = ((kinds >> (KIND_BITS * within)) & KIND_MASK) * count + place
    }
  }
}

function kept(places: Places, table: RestTable, index: number, outcome: Outcome): Outcome {
  keepRest(places, table, index, outcome)
  return outcome
}
