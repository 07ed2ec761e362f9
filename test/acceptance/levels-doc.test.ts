import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { LEVELS } from '../../src/golf/player/level.ts'
import { levelsPage } from '../../tools/levels/levels-page.ts'

const page = readFileSync('docs/levels.md', 'utf8')

describe('docs/levels.md', () => {
  it('says what the program expects of each level today', () => {
    expect(levelsPage(), 'npm run levels-doc writes it again').toBe(page)
  })

  it('gives every level, men and women, with an uncertainty in every cell', () => {
    const rows = page.split('\n').filter((line) => line.includes(' ± '))
    for (const { name } of LEVELS)
      expect(rows.filter((row) => row.startsWith(`| ${name} |`)).length, name).toBe(4)
    for (const row of rows) {
      const cells = row.split('|').slice(2, -1)
      for (const cell of cells) expect(cell, row).toMatch(/^ \d+(\.\d+)? ± \d+(\.\d+)? $/)
    }
  })
})
