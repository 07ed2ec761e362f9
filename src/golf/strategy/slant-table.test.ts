import { describe, expect, it } from 'vitest'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import type { Places } from './places.ts'
import { restAt } from './rest-table.ts'
import { type Catch, leftOf, metCells, slantTable, slotOf } from './slant-table.ts'

describe('a table of what a slant meets', () => {
  it('holds the catches of every cell in their order, and none of the others', () => {
    const places = { count: 9000, coarseCount: 6001 } as Places
    const next = seededGenerator(77)
    const byCell = new Map<number, Catch[]>()
    const catches = Array.from({ length: 8000 }, (_, index) => {
      // Cells on both ends of a word among them, and the last of all.
      const from = index === 0 ? 6000 : Math.floor(next() * 194) * 31
      const one = { from, outcome: Math.floor(next() * 4 * places.count), chance: Math.fround(next() / 100) }
      byCell.set(from, [...(byCell.get(from) ?? []), one])
      return one
    })
    const table = slantTable(places, catches)
    expect([...metCells(table)]).toEqual([...byCell.keys()].sort((a, b) => a - b))
    for (let cell = 0; cell < places.coarseCount; cell++) {
      const slot = slotOf(table, cell)
      const own = byCell.get(cell) ?? []
      expect(slot > 0).toBe(own.length > 0)
      if (slot === 0) continue
      const found: Catch[] = []
      for (let at = table.first[slot - 1] as number; at < (table.first[slot] as number); at++)
        found.push({
          from: cell,
          outcome: restAt(places, table.outcome, at),
          chance: table.chance[at] as number,
        })
      expect(found).toEqual(own)
      expect(leftOf(table, slot - 1)).toBeCloseTo(1 - own.reduce((sum, { chance }) => sum + chance, 0), 12)
    }
  })
})
