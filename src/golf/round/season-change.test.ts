import { describe, expect, it } from 'vitest'
import { completePlayer } from '#golf/player/complete-player.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import type { HoleRecap, StrokeSplit } from './recap.ts'
import { type RoundRecap, recapRound } from './recap-round.ts'
import { type Change, type Compared, type SeasonChange, seasonChange } from './season-change.ts'
import { seasonChangeWords } from './season-change-words.ts'
import { struckHole, struckStroke } from './struck-holes.fixture.ts'

const player = completePlayer({
  ...{ name: 'Test', hand: 'right', handicapIndex: 15, sex: 'male' },
  ...{ clubs: [], shortGame: {}, putting: {} },
})

/** A season of rounds of 18 holes, a drive and an approach each, struck with a spread of 0.4 about a mean. */
function season(
  rounds: number,
  random: () => number,
  { approach = 0, decision = 0.02 }: { readonly approach?: number; readonly decision?: number } = {},
): RoundRecap[] {
  const normal = (): number => normalQuantile(random())
  const stroke = (part: StrokeSplit['part'], mean: number): StrokeSplit =>
    struckStroke(part, {
      decision: random() < 0.1 ? 10 * decision : 0,
      execution: mean + 0.4 * normal(),
      luck: 0.4 * normal(),
    })
  const hole = (): HoleRecap => struckHole([stroke('tee', 0), stroke('approach', approach)])
  return Array.from({ length: rounds }, () => recapRound(Array.from({ length: 18 }, hole)))
}

const of = ({ changes }: SeasonChange, what: Compared): Change =>
  changes.find((one) => one.what === what) as Change
const isTold = ({ changes }: SeasonChange): boolean =>
  changes.some(({ verdict }) => verdict === 'better' || verdict === 'worse')

describe('two seasons of a player', () => {
  it('who has not changed tell of a change in about one of twenty', () => {
    const random = seededGenerator(8)
    const told = Array.from({ length: 80 }, () =>
      isTold(seasonChange(season(12, random), season(20, random), player)),
    ).filter(Boolean).length
    // Four of 80 and three standard errors; parts that are not played make the rest stricter.
    expect(told).toBeLessThan(4 + 3 * 2)
  })

  it('who strikes approaches better by a planted 0.15 a stroke are told so, by about what it was', () => {
    const random = seededGenerator(3)
    const change = seasonChange(season(20, random), season(20, random, { approach: -0.15 }), player)
    const approach = of(change, 'approach')
    expect(approach.verdict).toBe('better')
    expect(approach.strokes).toBeGreaterThan(approach.low)
    expect(approach.low).toBeLessThan(-18 * 0.15)
    expect(approach.high).toBeGreaterThan(-18 * 0.15)
    expect(approach.now - approach.before).toBeCloseTo(approach.strokes, 12)
    expect(of(change, 'tee').verdict).toBe('chance')
    expect(seasonChangeWords(change).join(' ')).toMatch(
      /Strokes to the green: \d\.\d{2} strokes a round better than in the season before/,
    )
  })

  it('whose choices cost ten times as much are told so, in strokes a round of now', () => {
    const random = seededGenerator(5)
    const change = seasonChange(season(10, random), season(16, random, { decision: 0.2 }), player)
    expect(of(change, 'choices').verdict).toBe('worse')
    expect(of(change, 'choices').now).toBeGreaterThan(3)
    expect(seasonChangeWords(change)[0]).toMatch(
      /^All strokes|^Your choices cost \d\.\d{2} strokes a round more/,
    )
  })

  it('are the other way round when they are exchanged', () => {
    const random = seededGenerator(6)
    const [one, other] = [season(8, random), season(8, random, { approach: 0.1 })]
    const [there, back] = [seasonChange(one, other, player), seasonChange(other, one, player)]
    expect(of(back, 'approach').strokes).toBeCloseTo(-of(there, 'approach').strokes, 12)
    expect(of(back, 'approach').low).toBeCloseTo(-of(there, 'approach').high, 12)
  })
})

it('tells nothing of too few rounds, and says so', () => {
  const random = seededGenerator(7)
  const change = seasonChange(season(2, random), season(20, random), player)
  expect(of(change, 'all').verdict).toBe('few')
  expect(of(change, 'sand').verdict).toBe('few')
  const none = seasonChange([], season(1, random), player)
  expect(none.changes.every(({ verdict }) => verdict === 'few')).toBe(true)
  expect(seasonChangeWords(none)).toEqual([
    'Too few rounds to tell what changed: 0 rounds in the season before and one round now.',
  ])
})

it('says how large a change would have had to be, where none is told', () => {
  const random = seededGenerator(9)
  const words = seasonChangeWords(seasonChange(season(6, random), season(6, random), player)).join(' ')
  expect(words).toContain('nothing has changed that is more than chance')
  expect(words).toMatch(/a change of less than \d\.\d{2} strokes a round in all cannot be told from chance/)
  expect(words).toContain('Too few strokes to tell of: strokes out of trees and scrub')
})
