import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Course } from '#golf/course/course.ts'
import { course, holeLine } from '#golf/course/invented-course.fixture.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { allowanceOf, type Competition, type Counting, type Play } from './competition.ts'
import { type CompetitionCard, competitionCard } from './competition-card.ts'
import type { EnteredRound, EnteredSide } from './entered-side.ts'
import { unknownStroke } from './unknown-stroke.ts'

// Sources: Rules of Golf 2023, 3.2, 21 and 23; Rules of Handicapping 2024, 6 and Appendix C.

const LINE = [
  [0, 0],
  [0, 300],
] as const
/** Eighteen par 4s, stroke index as the hole; slope 113 and rated at par, so that the course handicap is the index. */
const links = (more: Partial<Course> = {}): Course =>
  course({
    holes: Array.from({ length: 18 }, (_, hole) =>
      holeLine(String(hole + 1), LINE, { par: 4, strokeIndex: hole + 1 }),
    ),
    teeSets: [
      { name: 'Grey', par: 72, courseRating: 72, slopeRating: 113 },
      { name: 'Blue', par: 71, courseRating: 71, slopeRating: 113 },
      { name: 'Bare', par: 72, courseRating: null, slopeRating: null },
    ],
    ...more,
  })
const player = (handicapIndex: number): Player =>
  completePlayer(
    parsePlayer(
      JSON.stringify({ schema: 'player/1', name: `P${handicapIndex}`, hand: 'right', handicapIndex }),
      'p',
    ),
  )
let files = 0
/** Scores from the first hole on; `null` = picked up. */
const round = (scores: readonly (number | null)[], more: Partial<EnteredRound> = {}): EnteredRound => {
  files += 1
  return {
    file: `r${files}`,
    course: null,
    tee: 'grey',
    round: {
      date: null,
      tee: null,
      format: null,
      holes: scores.map((score, hole) => ({
        ref: String(hole + 1),
        strokes: Array.from({ length: score ?? 0 }, () => unknownStroke('')),
        putts: 0,
        firstPuttMetres: null,
        isPickedUp: score === null,
        place: `line ${hole + 1}`,
      })),
    },
    ...more,
  }
}
const side = (handicaps: readonly number[], ...rounds: readonly EnteredRound[]): EnteredSide => ({
  players: handicaps.map(player),
  rounds,
})
const asked = (play: Play, by: Counting, more: Partial<Competition> = {}): Competition => ({
  play,
  by,
  limit: { kind: 'net-double-bogey' },
  allowance: null,
  isGross: false,
  ...more,
})
const fours = (count = 18): number[] => Array(count).fill(4)
const counts = (card: CompetitionCard, of = 0): (number | null)[] =>
  (card.sides[of]?.holes ?? []).map((hole) => hole.counts)

describe('the allowance of a form of play', () => {
  const rows = readFileSync('test/fixtures/reference/whs_allowances.csv', 'utf8').trim().split('\n').slice(1)
  const published = new Map(
    rows.map((row) => {
      const [, format = '', allowance = ''] = row.split(',')
      const parts = (allowance.match(/\d+/g) ?? []).map(Number)
      return [format, allowance.includes('combined') ? [parts[0], parts[0]] : parts] as const
    }),
  )
  it.each([
    ['singles', 'strokes', 1, 'Individual stroke play'],
    ['singles', 'points', 1, 'Individual Stableford'],
    ['singles', 'maximum', 1, 'Individual maximum score'],
    ['singles', 'par', 1, 'Individual par/bogey'],
    ['singles', 'match', 1, 'Individual match play'],
    ['four-ball', 'strokes', 2, 'Four-ball stroke play'],
    ['four-ball', 'points', 2, 'Four-ball Stableford'],
    ['four-ball', 'par', 2, 'Four-ball par/bogey'],
    ['four-ball', 'match', 2, 'Four-ball match play'],
    ['foursomes', 'match', 2, 'Foursomes'],
    ['foursomes', 'strokes', 2, 'Foursomes'],
    ['greensomes', 'points', 2, 'Greensomes'],
    ['chapman', 'strokes', 2, 'Pinehurst/Chapman'],
    ['scramble', 'strokes', 2, 'Scramble 2'],
    ['scramble', 'strokes', 3, 'Scramble 3'],
    ['scramble', 'strokes', 4, 'Scramble 4'],
  ] as const)('%s by %s of %i is the published one: %s', (play, by, partners, format) => {
    expect([allowanceOf(play, by, partners)].flat()).toEqual(published.get(format))
  })
})

describe('the card of a side', () => {
  it('counts the better ball of each hole, and says which', () => {
    // 85 % of 10 and of 20: 8.5 and so 9, and 17.
    const own = [5, null, 6, ...fours(15)]
    const theirs = [6, 5, null, ...Array(15).fill(9)]
    const card = competitionCard(links(), asked('four-ball', 'strokes'), [
      side([10, 20], round(own), round(theirs)),
    ])
    const [one] = card.sides
    expect(one?.balls.map(({ playingHandicap }) => playingHandicap)).toEqual([9, 17])
    // Hole 1: 4 and 5; hole 2: nobody and 4; hole 3: 5 and nobody.
    expect(counts(card).slice(0, 3)).toEqual([4, 4, 5])
    expect(one?.holes.slice(0, 4).map(({ by }) => by)).toEqual([[0], [1], [0], [0]])
    // Then six net 3s and nine 4s.
    expect(one?.total).toBe(4 + 4 + 5 + 6 * 3 + 9 * 4)
  })

  it('has no total in strokes when nobody holed out, and has one in points, against par and with a maximum', () => {
    const scores = [null, ...Array(17).fill(5)]
    const of = (by: Counting, more: Partial<Competition> = {}): CompetitionCard =>
      competitionCard(links(), asked('singles', by, { isGross: true, ...more }), [side([0], round(scores))])
    expect(of('strokes').sides[0]?.total).toBeNull()
    expect(of('points').sides[0]?.total).toBe(17)
    // Rule 21.3: a hole that is not holed out is lost.
    expect(of('par').sides[0]?.total).toBe(-18)
    expect(of('maximum').sides[0]?.total).toBe(6 + 17 * 5)
    expect(of('maximum', { limit: { kind: 'double-par' } }).sides[0]?.total).toBe(8 + 17 * 5)
  })

  it('takes the better of two balls by points and against par', () => {
    const two = side([0, 0], round([3, 6, 5]), round([5, 4, 5]))
    const of = (by: Counting): CompetitionCard =>
      competitionCard(links(), asked('four-ball', by, { isGross: true }), [two])
    expect(counts(of('points'))).toEqual([3, 2, 1])
    expect(counts(of('par'))).toEqual([1, 0, -1])
    expect(of('par').sides[0]?.total).toBe(0)
  })

  it('gives one ball the handicap of both: 15 and 20 play foursomes off 18', () => {
    const card = competitionCard(links(), asked('foursomes', 'strokes'), [
      side([15, 20], round(Array(18).fill(5))),
    ])
    expect(card.sides[0]?.balls[0]).toMatchObject({ playingHandicap: 18, received: 18 })
    expect(card.sides[0]?.total).toBe(72)
    expect(card.allowance).toEqual([50, 50])
  })
})

describe('two sides', () => {
  it('in a four-ball match all receive the difference to the lowest', () => {
    // A magazine column of October 2011 on strokes in a match, at the full allowance of that time: 4, 5, 10 and 15 receive 0, 1, 6 and 11.
    const card = competitionCard(links(), asked('four-ball', 'match', { allowance: 100 }), [
      side([4, 5], round(fours()), round(fours())),
      side([10, 15], round(Array(18).fill(5)), round(Array(18).fill(6))),
    ])
    expect(card.sides.flatMap(({ balls }) => balls.map(({ received }) => received))).toEqual([0, 1, 6, 11])
    // Hole 1: net 3 (the 5 with a stroke) against net 4; holes 2 to 6: 4 against 4; then 4 against 5: up on 1, 7, 8, …
    expect(card.match?.holes.slice(0, 8).map(({ result }) => result)).toEqual([1, 0, 0, 0, 0, 0, 1, 1])
    // Six up with seven to play is not enough, seven up with six is.
    expect(card.match).toMatchObject({ up: 7, left: 6, isOver: true, of: 18 })
  })

  it('in a foursomes match the difference of the sides’ handicaps is given: 18 − 8 = 10', () => {
    const card = competitionCard(links(), asked('foursomes', 'match'), [
      side([6, 10], round(fours())),
      side([15, 20], round(fours())),
    ])
    expect(card.sides.map(({ balls }) => balls[0]?.received)).toEqual([0, 10])
    // All holes in fours: the first ten are lost, and the match with the tenth.
    expect(card.match).toMatchObject({ up: -10, left: 8, isOver: true })
  })

  it('a partner who picks up loses nothing as long as the other holes out', () => {
    const card = competitionCard(links(), asked('four-ball', 'match', { isGross: true }), [
      side([0, 0], round([null, null]), round([4, null])),
      side([0, 0], round([5, null]), round([null, 9])),
    ])
    expect(card.match?.holes.map(({ result }) => result)).toEqual([1, -1])
  })
})

describe('what cannot be scored', () => {
  const one = (): EnteredSide => side([10], round(fours()))
  const refused = (
    competition: Competition,
    sides: readonly EnteredSide[],
    on: Course = links(),
  ): { readonly code: string; readonly where: string } => {
    try {
      competitionCard(on, competition, sides)
    } catch (error) {
      return error as { code: string; where: string }
    }
    throw new Error('was scored')
  }
  const named = (round: EnteredRound, more: Partial<EnteredRound>): EnteredRound => ({
    ...round,
    file: 'x',
    ...more,
  })

  it.each([
    ['a match alone', asked('singles', 'match'), [one()], 'MAR-SCORE-001', '--opponent'],
    ['one player in four-ball', asked('four-ball', 'strokes'), [one()], 'MAR-SCORE-001', '--player'],
    [
      'five in a scramble',
      asked('scramble', 'strokes'),
      [side([1, 2, 3, 4, 5], round(fours()))],
      'MAR-SCORE-001',
      '--player',
    ],
    [
      'two rounds of one ball',
      asked('foursomes', 'strokes'),
      [side([1, 2], round(fours()), round(fours(9)))],
      'MAR-SCORE-001',
      '--round',
    ],
    [
      'sides of three and two',
      asked('scramble', 'strokes'),
      [side([1, 2], round(fours())), side([1, 2, 3], round(fours()))],
      'MAR-SCORE-001',
      '--opponent',
    ],
    [
      'another course',
      asked('singles', 'strokes'),
      [side([1], named(round(fours()), { course: 'Elsewhere' }))],
      'MAR-SCORE-002',
      'x: course',
    ],
    [
      'tees of another par',
      asked('singles', 'match'),
      [one(), side([1], named(round(fours()), { tee: 'blue' }))],
      'MAR-SCORE-002',
      'x: tee',
    ],
    [
      'a hole the course lacks',
      asked('singles', 'strokes'),
      [side([1], named(round(Array(19).fill(4)), {}))],
      'MAR-COURSE-001',
      'x: line 19',
    ],
    [
      'tees nobody rated',
      asked('singles', 'strokes'),
      [side([1], named(round(fours()), { tee: 'bare' }))],
      'MAR-SCORE-003',
      'x: tee',
    ],
    [
      'tees nobody named',
      asked('singles', 'strokes'),
      [side([1], named(round(fours()), { tee: null }))],
      'MAR-SCORE-003',
      'x: tee',
    ],
    [
      'an allowance nobody published',
      asked('four-ball', 'maximum'),
      [side([1, 2], round(fours()), round(fours()))],
      'MAR-SCORE-003',
      '--allowance',
    ],
  ] as const)('%s is refused with its place', (_, competition, sides, code, where) => {
    expect(refused(competition, sides)).toMatchObject({ code, where })
  })

  it('a card without stroke index or par, or of nine holes', () => {
    const without = (more: object): Course =>
      links({ holes: links().holes.map((hole) => (hole.ref === '5' ? { ...hole, ...more } : hole)) })
    expect(refused(asked('singles', 'strokes'), [one()], without({ strokeIndex: null }))).toMatchObject({
      code: 'MAR-SCORE-003',
      where: 'hole 5',
    })
    expect(refused(asked('singles', 'points'), [one()], without({ par: null }))).toMatchObject({
      code: 'MAR-SCORE-003',
      where: 'hole 5',
    })
    const nine = links({ holes: links().holes.slice(0, 9) })
    expect(refused(asked('singles', 'strokes'), [side([1], round(fours(9)))], nine).code).toBe(
      'MAR-SCORE-003',
    )
    // Gross needs none of it.
    const gross = competitionCard(nine, asked('singles', 'strokes', { isGross: true }), [
      side([1], round(fours(9))),
    ])
    expect(gross.sides[0]?.total).toBe(36)
  })

  it('other days and other holes are told and scored', () => {
    const on = (date: string, count: number): EnteredRound => {
      const played = round(fours(count))
      return { ...played, round: { ...played.round, date } }
    }
    const card = competitionCard(links(), asked('singles', 'strokes', { isGross: true }), [
      side([0], on('2026-05-01', 18)),
      side([0], on('2026-05-02', 17)),
    ])
    expect(card.faults.map(({ code, severity }) => `${severity} ${code}`)).toEqual([
      'warning MAR-SCORE-004',
      'error MAR-SCORE-004',
    ])
    expect(card.faults[1]?.message).toContain('Hole 18 was')
    expect(card.sides.map(({ total }) => total)).toEqual([72, 68])
  })
})
