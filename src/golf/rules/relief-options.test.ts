import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type ReliefSituation, reliefOptions } from './relief-options.ts'
import { RULES_2023 } from './rules-2023.ts'

// Rules of Golf 2023, as digested rule by rule in test/fixtures/reference/rules_2023.json.
interface Entry {
  readonly rule: string
  readonly relief?: string
  readonly case?: string
  readonly penalty?: number
  readonly size_club_lengths?: number
  readonly colour?: readonly string[]
  readonly search_minutes?: number
}
const published = JSON.parse(
  readFileSync(new URL('../../../test/fixtures/reference/rules_2023.json', import.meta.url), 'utf8'),
) as { readonly edition: string; readonly entries: readonly Entry[] }

function entry(rule: string): Entry {
  const found = published.entries.find((candidate) => candidate.rule === rule)
  if (!found) throw new Error(`no entry for ${rule}`)
  return found
}

const EVERY: readonly ReliefSituation[] = [
  'penalty-red',
  'penalty-yellow',
  'out',
  'lost',
  'unplayable',
  'unplayable-in-bunker',
]

function kinds(situation: ReliefSituation, localRules: readonly string[] = []): string[] {
  return reliefOptions({ situation, localRules }).map((option) => option.kind)
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
})

describe('reliefOptions', () => {
  it('gives two ways out of yellow and three out of red (17.1d)', () => {
    expect(kinds('penalty-yellow')).toEqual(['stroke-and-distance', 'back-on-the-line'])
    expect(kinds('penalty-red')).toEqual(['stroke-and-distance', 'back-on-the-line', 'lateral'])
    for (const option of reliefOptions({ situation: 'penalty-red', localRules: [] })) {
      expect(option.penaltyStrokes).toBe(1)
      expect(option.reference).toBe(option.kind === 'stroke-and-distance' ? 'last-stroke' : 'crossing-point')
    }
  })

  it('gives only stroke and distance for lost and out, and E-5 for two strokes where it is in force (18.2)', () => {
    for (const situation of ['out', 'lost'] as const) {
      expect(kinds(situation)).toEqual(['stroke-and-distance'])
      expect(kinds(situation, ['G-5'])).toEqual(['stroke-and-distance'])
      const options = reliefOptions({ situation, localRules: ['G-5', 'E-5'] })
      expect(options.map((option) => [option.kind, option.penaltyStrokes])).toEqual([
        ['stroke-and-distance', 1],
        ['local-rule-E-5', 2],
      ])
    }
    expect(kinds('unplayable', ['E-5'])).toEqual(kinds('unplayable'))
    expect(kinds('penalty-red', ['E-5'])).toEqual(kinds('penalty-red'))
  })

  it('keeps an unplayable ball in its bunker for one stroke and lets it out on the line for two (19.2, 19.3)', () => {
    expect(kinds('unplayable')).toEqual(['stroke-and-distance', 'back-on-the-line', 'lateral'])
    const options = reliefOptions({ situation: 'unplayable-in-bunker', localRules: [] })
    expect(
      options.map((option) => [option.kind, option.penaltyStrokes, option.clause, option.isInBunker]),
    ).toEqual([
      ['stroke-and-distance', 1, '19.2a', false],
      ['back-on-the-line', 1, '19.3a', true],
      ['lateral', 1, '19.3a', true],
      ['back-on-the-line-out-of-bunker', 2, '19.3b', false],
    ])
  })

  it('always offers stroke and distance, for which no ball need be found (18.1)', () => {
    for (const situation of EVERY) {
      const [first] = reliefOptions({ situation, localRules: [] })
      expect(first).toMatchObject({ kind: 'stroke-and-distance', penaltyStrokes: 1, needsSpot: false })
    }
    expect(entry('18.1').penalty).toBe(1)
  })

  it('measures lateral relief with two club-lengths and the line with one', () => {
    for (const situation of EVERY)
      for (const option of reliefOptions({ situation, localRules: ['E-5'] })) {
        if (option.kind === 'lateral') expect(option.clubLengths).toBe(2)
        if (option.kind.startsWith('back-on-the-line')) expect(option.clubLengths).toBe(1)
      }
  })
})
