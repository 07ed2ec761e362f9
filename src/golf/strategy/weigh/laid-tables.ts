import type { KernelMemory } from '#numbers/kernels/kernel-memory.ts'
import { BLOCK, LANDING, SLANT } from '#numbers/kernels/weigh-layout.ts'
import type { OutcomeCosts } from '../outcome-costs.ts'
import type { Places } from '../places.ts'
import { copyRests, type RestTable, restAt } from '../rest-table.ts'
import { leftOf, metCells, type SlantTable } from '../slant-table.ts'

/**
 * Tables of a hole in the kernel's memory, each laid once. The kernel's rows are the columns of the hole: lies follow each
 * other along the hole more than across it, and neighbours of one lie are weighed together.
 */
export interface LaidTables {
  /** Address of the table of a slant on which balls leave; 0 for none. */
  rise(table: SlantTable | null): number
  /** Number of the landing of a run, heading and way down. Its rows are none yet, and its rests are not laid. */
  landing(rest: RestTable, down: SlantTable | null): number
  /** Copies where balls of a landing rest to an address with room for a word a place; there the kernel reads them from now on. */
  layRests(landing: number, address: number): void
  /** Addresses of landings by their number. */
  readonly landings: readonly number[]
  /** Address of a table of where balls rest that land on the green; it is filled by `fill`. */
  green(table: RestTable): number
  /** Works out all tables that were asked for, those of one way together, once no more are to come. Looks up before each table. */
  fill(lookUp: () => void): void
  /** Outcomes in any filled table that are not simply the value of a place. */
  readonly specials: ReadonlySet<number>
}

/** The kernel's number of a coarse cell. */
export function turnedCell({ coarse }: Places, cell: number): number {
  const row = Math.floor(cell / coarse.columns)
  return (cell - row * coarse.columns) * coarse.rows + row
}

const WORD_BITS = 32

/** Lays tables of a hole in a kernel's memory when they are first asked for. */
export function laidTables(memory: KernelMemory, places: Places, costs: OutcomeCosts): LaidTables {
  const { columns, rows } = places.coarse
  const specials = new Set<number>()
  const copied = new Int32Array(places.count)
  const greens = new Map<RestTable, number>()
  const rests: RestTable[] = []
  const turned = Int32Array.from({ length: places.count }, (_, place) =>
    place < places.coarseCount ? turnedCell(places, place) : place,
  )
  const slants = new Map<SlantTable, number>()
  const landings: number[] = []
  const numbers = new Map<RestTable, Map<SlantTable | null, number>>()

  function noteSpecial(outcome: number): void {
    if (costs.isSpecial[outcome] === 1) specials.add(outcome)
  }

  function green(table: RestTable): number {
    const known = greens.get(table)
    if (known !== undefined) return known
    const address = memory.allocate(4 * places.greenPlaces.length)
    greens.set(table, address)
    return address
  }

  function fill(lookUp: () => void): void {
    for (const [table, address] of greens) {
      lookUp()
      noteRests(table, places.greenPlaces.length, memory.words(), address / 4)
    }
    for (const rest of numbers.keys()) {
      lookUp()
      noteRests(rest, places.count, copied, 0)
    }
  }

  /** Copies a table and notes the specials in it. */
  function noteRests(table: RestTable, size: number, into: Int32Array, at: number): void {
    copyRests(places, table, size, into, at)
    for (let index = at; index < at + size; index++) noteSpecial(into[index] as number)
  }

  function laySlant(table: SlantTable): number {
    // Numbered anew, in the order of the kernel's cells.
    const met = metCells(table)
    const numbers = Array.from(met.keys()).sort((a, b) => turnedMet(a) - turnedMet(b))
    function turnedMet(number: number): number {
      return turned[met[number] as number] as number
    }
    const cells = Int32Array.from(numbers, turnedMet)
    const first = new Int32Array(cells.length + 1)
    const outcome = new Int32Array(table.chance.length)
    const chance = new Float32Array(table.chance.length)
    let next = 0
    for (const [at, number] of numbers.entries()) {
      for (let from = table.first[number] as number; from < (table.first[number + 1] as number); from++) {
        outcome[next] = restAt(places, table.outcome, from)
        chance[next] = table.chance[from] as number
        next += 1
      }
      first[at + 1] = next
    }
    outcome.forEach(noteSpecial)
    const stride = Math.ceil((rows + BLOCK) / WORD_BITS)
    const bits = new Int32Array(columns * stride)
    const before = new Int32Array(columns * stride)
    for (const cell of cells) {
      const row = Math.floor(cell / rows)
      const column = cell - row * rows
      const at = row * stride + (column >> 5)
      bits[at] = (bits[at] as number) | (1 << (column & 31))
      if (at + 1 < before.length) before[at + 1] = (before[at + 1] as number) + 1
    }
    for (let at = 1; at < before.length; at++)
      before[at] = (before[at] as number) + (before[at - 1] as number)
    const fields: readonly (readonly [field: number, word: number])[] = [
      [SLANT.met, memory.place(bits)],
      [SLANT.before, memory.place(before)],
      [SLANT.cells, memory.place(cells)],
      [SLANT.left, memory.place(Float32Array.from(numbers, (number) => leftOf(table, number)))],
      [SLANT.first, memory.place(first)],
      [SLANT.outcome, memory.place(outcome)],
      [SLANT.chance, memory.place(chance)],
      [SLANT.count, cells.length],
      [SLANT.sum, 0],
      [SLANT.back, 0],
    ]
    return layRecord(SLANT.words, fields)
  }

  function layRecord(words: number, fields: readonly (readonly [field: number, word: number])[]): number {
    const address = memory.allocate(4 * words)
    for (const [field, word] of fields) memory.words()[address / 4 + field] = word
    return address
  }

  function slant(table: SlantTable | null): number {
    if (table === null) return 0
    const known = slants.get(table) ?? laySlant(table)
    slants.set(table, known)
    return known
  }

  function rise(table: SlantTable | null): number {
    const address = slant(table)
    if (table === null || memory.words()[address / 4 + SLANT.sum] !== 0) return address
    const bytes = 4 * (table.first.length - 1)
    const [sum, back] = [memory.allocate(bytes), memory.allocate(bytes)]
    memory.words()[address / 4 + SLANT.sum] = sum
    memory.words()[address / 4 + SLANT.back] = back
    return address
  }

  return {
    specials,
    landings,
    rise,
    green,
    fill,
    landing(rest, down) {
      const byDown = numbers.get(rest) ?? new Map<SlantTable | null, number>()
      numbers.set(rest, byDown)
      const known = byDown.get(down)
      if (known !== undefined) return known
      const made = layRecord(LANDING.words, [
        [LANDING.rest, 0],
        [LANDING.slant, slant(down)],
        [LANDING.hasNear, 0],
        [LANDING.rowFrom, columns],
        [LANDING.rowTo, 0],
      ])
      byDown.set(down, landings.length)
      rests.push(rest)
      return landings.push(made) - 1
    },
    layRests(landing, address) {
      copyRests(places, rests[landing] as RestTable, places.count, copied, 0)
      const words = memory.words()
      const from = address / 4
      for (let place = 0; place < places.count; place++)
        words[from + (turned[place] as number)] = copied[place] as number
      words[(landings[landing] as number) / 4 + LANDING.rest] = address
    },
  }
}
