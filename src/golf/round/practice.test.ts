import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { CALM_DAY } from '#golf/strategy/invented-hole.fixture.ts'
import { smallHole, threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import { improvedPlayer, PRACTICE_PARTS } from './improved-player.ts'
import { practiceOf } from './practice.ts'
import { type PracticeHole, practiceHole } from './practice-hole.ts'
import { encodePracticeNotes, NO_PRACTICE_NOTES, parsePracticeNotes } from './practice-notes.ts'
import { itemSentences } from './practice-words.ts'
import { retestDay } from './retest-day.ts'
import { PRACTICE_RATES } from './settings.ts'

describe('what practice is worth', () => {
  const player = threeClubs()
  let hole: PracticeHole
  beforeAll(() => {
    hole = practiceHole({ hole: smallHole(230, 40), player, day: CALM_DAY })
  })

  it('is never a loss, and a gain for what is used on the hole', () => {
    // A quick plan settles to 0.001 of a stroke, which a step of a tenth makes ten times as large.
    for (const part of PRACTICE_PARTS) expect(hole.slopes[part], part).toBeGreaterThan(-0.02)
    for (const part of ['iron-direction', 'mishits', 'short-game', 'putting-pace'] as const)
      expect(hole.slopes[part], part).toBeGreaterThan(0.01)
    // There is no wood and no hybrid in this bag.
    expect(hole.slopes['long-direction']).toBe(0)
  })

  it('goes with the stated rate and with the number of holes', () => {
    const once = practiceOf([hole])
    const twice = practiceOf([hole, hole], { ...PRACTICE_RATES, mishits: 3 * PRACTICE_RATES.mishits })
    const hour = (of: typeof once, part: string): number =>
      of.parts.find((one) => one.part === part)?.strokesAnHour ?? Number.NaN
    expect(hour(twice, 'mishits')).toBeCloseTo(6 * hour(once, 'mishits'), 12)
    expect(hour(twice, 'short-game')).toBeCloseTo(2 * hour(once, 'short-game'), 12)
    expect(once.parts.map(({ strokesAnHour }) => strokesAnHour)).toEqual(
      once.parts.map(({ strokesAnHour }) => strokesAnHour).toSorted((a, b) => b - a),
    )
    expect(twice.items.length).toBeLessThanOrEqual(3)
    const [first] = twice.items
    if (first !== undefined)
      expect(
        itemSentences(
          { practice: twice, notes: NO_PRACTICE_NOTES, hours: 10, weeks: 1, retest: null },
          first,
        ),
      ).toEqual([
        expect.stringMatching(/10 hours of it are worth about \d\.\d[05] of/),
        'Drill: the professional’s own.',
        expect.stringMatching(/^Re-test in 1 week: /),
      ])
  })
})

describe('a better player', () => {
  it('is better in one part and the same in all others', () => {
    const player = threeClubs()
    fc.assert(
      fc.property(
        fc.constantFrom(...PRACTICE_PARTS),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (part, share) => {
          const better = improvedPlayer(player, part, share)
          const isPutting = part.startsWith('putting')
          expect(better.clubs.map(({ carryMetres }) => carryMetres)).toEqual(
            player.clubs.map(({ carryMetres }) => carryMetres),
          )
          if (isPutting || part === 'short-game') expect(better.clubs).toEqual(player.clubs)
          if (!isPutting) expect(better.putting).toEqual(player.putting)
          // A chip is followed by a putt: who putts better loses less near the green.
          expect(better.shortGame.strokesLost).toBeLessThanOrEqual(player.shortGame.strokesLost + 1e-12)
        },
      ),
    )
  })
})

describe('the practice file', () => {
  const read = (file: object): unknown => parsePracticeNotes(JSON.stringify(file), 'p.json')

  it('takes the professional’s own rates and words', () => {
    const notes = parsePracticeNotes(
      '{"schema":"practice/1","rates":{"putting-pace":0.03},"drills":{"mishits":" feet together, 30 balls "}}',
      'p.json',
    )
    expect(notes.rates).toEqual({ ...PRACTICE_RATES, 'putting-pace': 0.03 })
    expect(notes.drills).toEqual({ mishits: 'feet together, 30 balls' })
  })

  it.each([
    [[], 'MAR-PRACTICE-001', 'p.json'],
    [{ rates: {} }, 'MAR-PRACTICE-001', 'p.json: schema'],
    [{ schema: 'practice/1', rate: {} }, 'MAR-PRACTICE-002', 'p.json: rate'],
    [
      { schema: 'practice/1', rates: { 'puting-pace': 0.1 } },
      'MAR-PRACTICE-002',
      'p.json: rates.puting-pace',
    ],
    [{ schema: 'practice/1', rates: { mishits: 1.5 } }, 'MAR-PRACTICE-002', 'p.json: rates.mishits'],
    [{ schema: 'practice/1', rates: 3 }, 'MAR-PRACTICE-001', 'p.json: rates'],
    [{ schema: 'practice/1', drills: { mishits: 3 } }, 'MAR-PRACTICE-002', 'p.json: drills.mishits'],
  ])('refuses %j', (file, code, where) => {
    expect(() => read(file)).toThrow(expect.objectContaining({ code, where }))
  })

  it('refuses what is not JSON', () => {
    expect(() => parsePracticeNotes('{', 'p.json')).toThrow(
      expect.objectContaining({ code: 'MAR-PRACTICE-001' }),
    )
  })
})

describe('the professional’s notes', () => {
  it('are the same when they are written and read again, without what is ours', () => {
    const notes = {
      rates: { ...PRACTICE_RATES, mishits: 0.03 },
      drills: { mishits: 'feet together', 'putting-line': ' ' },
    }
    const text = encodePracticeNotes(notes)
    expect(JSON.parse(text)).toEqual({
      schema: 'practice/1',
      rates: { mishits: 0.03 },
      drills: { mishits: 'feet together' },
    })
    expect(parsePracticeNotes(text, 'p.json')).toEqual({ ...notes, drills: { mishits: 'feet together' } })
  })
})

describe('retestDay', () => {
  it('counts weeks over the end of a year and of February, and knows what is no day', () => {
    expect(retestDay('2026-11-25', 6)).toBe('2027-01-06')
    expect(retestDay('2028-02-22', 1)).toBe('2028-02-29')
    for (const text of ['', '2026-02-30', 'May', '2026-5-1']) expect(retestDay(text, 1)).toBeNull()
  })
})
