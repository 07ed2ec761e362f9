import { describe, expect, it } from 'vitest'
import { type ReliefSituation, reliefOptions } from './relief-options.ts'

// Rules of Golf 2023, 17 to 19; the numbers stand against the published table in rules-2023.test.ts.
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
      expect(options[1]?.reference).toBe(situation === 'out' ? 'crossing-point' : 'ball')
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
  })

  it('measures lateral relief with two club-lengths and the line with one', () => {
    for (const situation of EVERY)
      for (const option of reliefOptions({ situation, localRules: ['E-5'] })) {
        if (option.kind === 'lateral') expect(option.clubLengths).toBe(2)
        if (option.kind.startsWith('back-on-the-line')) expect(option.clubLengths).toBe(1)
      }
  })
})
