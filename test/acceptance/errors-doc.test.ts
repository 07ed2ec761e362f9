import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { FAULT_CODES } from '../../src/faults/codes.ts'
import { errorsPage } from '../../tools/errors-page.ts'

describe('the table of codes', () => {
  it('is what docs/errors.md says', () => {
    expect(readFileSync('docs/errors.md', 'utf8'), 'npm run errors-doc writes it again').toBe(
      errorsPage(FAULT_CODES),
    )
  })

  it('has codes of one form and a sentence for each', () => {
    for (const [code, meaning] of Object.entries(FAULT_CODES)) {
      expect(code).toMatch(/^MAR-[A-Z]+-\d{3}$/)
      expect(meaning, code).toMatch(/^[A-Z“].+\.$/)
    }
  })

  it('has no code that nothing raises', () => {
    const sources = execFileSync('git', ['ls-files', '-co', '--exclude-standard', 'src'], {
      encoding: 'utf8',
    })
      .split('\n')
      .filter(
        (path) => /\.tsx?$/.test(path) && !path.endsWith('faults/codes.ts') && !path.endsWith('.test.ts'),
      )
      .map((path) => readFileSync(path, 'utf8'))
      .join('\n')
    expect(Object.keys(FAULT_CODES).filter((code) => !sources.includes(code))).toEqual([])
  })
})
