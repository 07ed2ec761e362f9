import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { publishedPage, publishedSubjects } from '../../tools/published-values/published-page.ts'
import { differenceOf, isBeyondBound } from '../../tools/published-values/published-row.ts'

const subjects = publishedSubjects()
const rows = subjects.flatMap((subject) => subject.rows)

describe('published values beside ours', () => {
  it('are what docs/published-values.md says', () => {
    const page = readFileSync('docs/published-values.md', 'utf8')
    expect(page, 'npm run published-values writes it again').toBe(publishedPage(subjects))
  })

  it('are at least 60, each of them numbers with a source and a status', () => {
    expect(rows.length).toBeGreaterThanOrEqual(60)
    for (const row of rows) {
      expect(Number.isFinite(row.published) && Number.isFinite(row.ours), row.what).toBe(true)
      expect(row.source.length, row.what).toBeGreaterThan(5)
      expect(row.status, row.what).toMatch(/^(VERIFIED|DERIVED|MEMORY)/)
    }
  })

  it('ask every question once', () => {
    const asked = rows.map((row) => `${row.what} ${row.source}`)
    expect(asked.filter((question, at) => asked.indexOf(question) !== at)).toEqual([])
  })

  it('hold for whole holes, solved: three rows in four within their bound, none further off than twice it', () => {
    const solved = rows.filter((row) => row.what.includes('solved'))
    expect(solved.length).toBeGreaterThanOrEqual(60)
    expect(solved.filter(isBeyondBound).length).toBeLessThanOrEqual(solved.length / 4)
    const far = solved.filter((row) => Math.abs(differenceOf(row)) > 2 * row.bound)
    expect(far.map((row) => row.what)).toEqual([])
  })

  it('carry a reason wherever they differ by more than their bound', () => {
    const bare = rows.filter((row) => isBeyondBound(row) && (row.reason ?? '').length < 20)
    expect(bare.map((row) => row.what)).toEqual([])
  })
})
