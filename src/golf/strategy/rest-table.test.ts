import { describe, expect, it } from 'vitest'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { OUTCOME_KINDS } from './outcome.ts'
import type { Places } from './places.ts'
import { restAt, restTable } from './rest-table.ts'

describe('a table of rests', () => {
  it.each([
    { count: 16_853, held: 'in half words' },
    { count: 65_535, held: 'in half words' },
    { count: 65_536, held: 'in words' },
  ])('gives back every outcome that was put in, $count places $held', ({ count, held }) => {
    const places = { count } as Places
    const next = seededGenerator(count)
    const outcomes = Array.from({ length: 5003 }, () => Math.floor(next() * count * OUTCOME_KINDS))
    outcomes[0] = count * OUTCOME_KINDS - 1
    outcomes[5002] = count - 1
    const table = restTable(places, outcomes.length, (index) => outcomes[index] as number)
    expect(Array.from(outcomes, (_, index) => restAt(places, table, index))).toEqual(outcomes)
    expect(table.words.BYTES_PER_ELEMENT).toBe(held === 'in half words' ? 2 : 4)
  })
})
