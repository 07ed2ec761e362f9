import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { stablefordPoints } from './stableford-points.ts'

describe('stablefordPoints', () => {
  // Rules of Golf 2023, 21.1b: every row of test/fixtures/reference/stableford_points.csv.
  const rows = readFileSync(
    new URL('../../../test/fixtures/reference/stableford_points.csv', import.meta.url),
    'utf8',
  )
    .trim()
    .split('\n')
    .slice(1)

  it('gives the published points', () => {
    expect(rows).toHaveLength(7)
    for (const row of rows) {
      const points = Number(row.slice(row.lastIndexOf(',') + 1))
      if (row.includes('2 or more over, or none')) {
        for (const over of [2, 3, 6]) expect(stablefordPoints(4 + over, 4), row).toBe(points)
        expect(stablefordPoints(null, 4)).toBe(points)
      } else expect(stablefordPoints(5 + Number(row.split(',')[1]), 5), row).toBe(points)
    }
  })
})
