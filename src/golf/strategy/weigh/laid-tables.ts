import type { KernelMemory } from '#numbers/kernels/kernel-memory.ts'
import { BLOCK, LANDING, SLANT } from '#numbers/kernels/weigh-layout.ts'
import type { OutcomeCosts } from '../outcome-costs.ts'
import type { Places } from '../places.ts'
import { type RestTable, restAt } from '../rest-table.ts'
import type { SlantTable } from '../slant-tables.ts'

/**
 * Tables of a hole in the kernel's memory, each laid once. The kernel's rows are the columns of the hole: lies follow each
 * other along the hole more than across it, and neighbours of one lie are weighed together.
 */
export interface LaidTables {
  /** Address of a slant table; 0 for none. */
  slant(table: SlantTable | null): number
  /** Number of the landing of a run, heading and way down. Its rows are none yet, and its rests are not laid. */
  landing(rest: RestTable, down: SlantTable | null): number
  /** Copies where balls of a landing rest to an address with room for a word a place; there the kernel reads them from now on. */
  layRests(landing: number, address: number): void
  /** Addresses of landings by their number. */
  readonly landings: readonly number[]
  /** Address of a table of where balls rest that land on the green. */
  green(table: RestTable): number
  /** Outcomes in any laid table that are not simply the value of a place. */
  readonly specials: ReadonlySet<number>
}

/** The kernel's number of a coarse cell. */
export function turnedCell({ coarse }: Places, cell: number): number {
  const row = Math.floor(cell / coarse.columns)
  return (cell - row * coarse.columns) * coarse.rows + row
}

/** Lays tables of a hole in a kernel's memory when they are first asked for. */
export function laidTables(memory: KernelMemory, places: Places, costs: OutcomeCosts): LaidTables {
  const { columns, rows } = places.coarse
  const specials = new Set<number>()
  const greens = new Map<RestTable, number>()
  const rests: RestTable[] = []
  const turned = Int32Array.from({ length: places.coarseCount }, (_, cell) => turnedCell(places, cell))
  const slants = new Map<SlantTable, number>()
  const landings: number[] = []
  const numbers = new Map<RestTable, Map<SlantTable | null, number>>()

  function noteSpecial(outcome: number): void {
    if (costs.isSpecial[outcome] === 1) specials.add(outcome)
  }

  function green(table: RestTable): number {
    const known = greens.get(table)
    if (known !== undefined) return known
    const rests = Int32Array.from(places.greenPlaces, (_, index) => restAt(places, table, index))
    rests.forEach(noteSpecial)
    const address = memory.place(rests)
    greens.set(table, address)
    return address
  }

  function laySlant(table: SlantTable): number {
    table.outcome.forEach(noteSpecial)
    const cells = Int32Array.from(table.cell, (cell) => turned[cell] as number)
    const slots = new Uint16Array(columns * (rows + BLOCK) + BLOCK)
    for (const [number, cell] of cells.entries()) slots[cell + Math.floor(cell / rows) * BLOCK] = number + 1
    const fields: readonly (readonly [field: number, word: number])[] = [
      [SLANT.slot, memory.place(new Uint8Array(slots.buffer))],
      [SLANT.cells, memory.place(cells)],
      [SLANT.left, memory.place(Float32Array.from(table.left))],
      [SLANT.first, memory.place(table.first)],
      [SLANT.outcome, memory.place(table.outcome)],
      [SLANT.chance, memory.place(table.chance)],
      [SLANT.count, cells.length],
      [SLANT.sum, memory.allocate(4 * cells.length)],
      [SLANT.back, memory.allocate(4 * cells.length)],
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

  return {
    specials,
    landings,
    slant,
    green,
    landing(rest, down) {
      const byDown = numbers.get(rest) ?? new Map<SlantTable | null, number>()
      if (byDown.size === 0)
        for (let place = 0; place < places.count; place++) noteSpecial(restAt(places, rest, place))
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
      const rest = rests[landing] as RestTable
      const words = memory.words()
      for (let place = 0; place < places.count; place++)
        words[address / 4 + (turned[place] ?? place)] = restAt(places, rest, place)
      words[(landings[landing] as number) / 4 + LANDING.rest] = address
    },
  }
}
