import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { RULES_2023 } from './rules-2023.ts'

// Rules of Golf 2023, as digested rule by rule in test/fixtures/reference/rules_2023.json.
interface Entry {
  readonly rule: string
  readonly penalty?: number
  readonly size_club_lengths?: number
  readonly colour?: readonly string[]
  readonly search_minutes?: number
  readonly max_image_scale?: string
  readonly max_page_in?: readonly number[]
  readonly larger_sheet_allowed?: string
}
const published = JSON.parse(
  readFileSync(new URL('../../../test/fixtures/reference/rules_2023.json', import.meta.url), 'utf8'),
) as { readonly edition: string; readonly entries: readonly Entry[] }

function entry(rule: string): Entry {
  const found = published.entries.find((candidate) => candidate.rule === rule)
  if (!found) throw new Error(`no entry for ${rule}`)
  return found
}

describe('RULES_2023', () => {
  it('holds the numbers of the published table, clause by clause', () => {
    expect(RULES_2023.edition).toBe(published.edition)
    expect(RULES_2023.searchMinutes).toBe(entry('18.2').search_minutes)
    const { penaltyArea, lostOrOut, unplayable } = RULES_2023
    const clauses = [
      ...Object.values(penaltyArea),
      ...Object.values(lostOrOut),
      ...Object.values(unplayable),
    ] as { clause: string; penaltyStrokes: number; clubLengths?: number; colours?: readonly string[] }[]
    expect(clauses).toHaveLength(10)
    for (const clause of clauses) {
      const source = entry(clause.clause)
      expect(clause.penaltyStrokes, clause.clause).toBe(source.penalty)
      if (source.colour) expect([...(clause.colours ?? [])].sort()).toEqual([...source.colour].sort())
      if (source.size_club_lengths) expect(clause.clubLengths, clause.clause).toBe(source.size_club_lengths)
    }
  })

  it('gives free relief within one club-length (16.1b)', () => {
    const { clause, penaltyStrokes, clubLengths } = RULES_2023.immovableObstruction
    expect(clubLengths).toBe(entry(clause).size_club_lengths)
    expect(penaltyStrokes).toBe(0)
  })

  it('holds the limits of a green book', () => {
    const { greenBook } = RULES_2023
    const source = entry(greenBook.clause)
    expect(source.max_image_scale).toContain(`1:${greenBook.scaleDenominator}`)
    // 3/8 inch for 5 yards: 180 inches over 3/8.
    expect((5 * 36) / (3 / 8)).toBe(greenBook.scaleDenominator)
    expect([...greenBook.pageInches]).toEqual(source.max_page_in)
    expect(source.larger_sheet_allowed).toContain(`${greenBook.largerSheetHoles} or more holes`)
    expect(entry(`Model Local Rule ${greenBook.approvedOnlyLocalRule}`)).toBeDefined()
    expect(entry(`Model Local Rule ${RULES_2023.devices.noDistanceLocalRule}`)).toBeDefined()
  })
})
