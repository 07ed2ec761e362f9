import { describe, expect, it } from 'vitest'
import { course, holeLine } from '#golf/course/invented-course.fixture.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import { matchOfRounds } from './match-of-rounds.ts'
import { cardLines } from './recap-words.ts'
import type { Round, RoundHole } from './round.ts'
import { roundCard } from './round-card.ts'
import { unknownStroke } from './unknown-stroke.ts'

// Rules of Handicapping 2024: the rated tees of the published examples (whs_worked_examples.csv), and Rules of Golf 2023, 21.1.

const LINE = [
  [0, 0],
  [0, 300],
] as const
const links = (courseRating: number | null, slopeRating: number) =>
  course({
    holes: Array.from({ length: 18 }, (_, hole) =>
      holeLine(String(hole + 1), LINE, { par: 4, strokeIndex: hole + 1 }),
    ),
    teeSets: [{ name: 'Grey', par: 72, courseRating, slopeRating }],
  })
const player = (handicapIndex: number) =>
  completePlayer(
    parsePlayer(JSON.stringify({ schema: 'player/1', name: 'Card', hand: 'right', handicapIndex }), 'card'),
  )
const hole = (ref: number, strokes: number | null): RoundHole => ({
  ref: String(ref),
  strokes: strokes === null ? [] : Array.from({ length: strokes - 1 }, () => unknownStroke('')),
  putts: strokes === null ? 0 : 1,
  firstPuttMetres: null,
  isPickedUp: strokes === null,
  place: `line ${ref}`,
})
const round = (scores: readonly (number | null)[]): Round => ({
  date: null,
  tee: 'grey',
  format: null,
  holes: scores.map((score, index) => hole(index + 1, score)),
})
const cardOf = (answer: ReturnType<typeof roundCard>) => {
  if ('missing' in answer) throw new Error(answer.missing)
  return answer.card
}

describe('the card of a round', () => {
  it('has the published differential: adjusted gross 85 on 71.5 and 128 is 11.9', () => {
    const scores = [...Array(13).fill(5), ...Array(5).fill(4)]
    const card = cardOf(roundCard(links(71.5, 128), player(12), round(scores), 'grey'))
    expect(card).toMatchObject({ gross: 85, adjustedGross: 85, differentialTenths: 119 })
  })

  it('plays off the allowance of stroke play and counts net and points by it', () => {
    // Index 7.9 on 71.1, 129 and par 72: course handicap 8.12 (published), 95 % of it 7.7, so 8.
    const card = cardOf(roundCard(links(71.1, 129), player(7.9), round(Array(18).fill(5)), 'grey'))
    expect(card).toMatchObject({ playingHandicap: 8, gross: 90, net: 82 })
    expect(card.holes.map(({ received }) => received)).toEqual([...Array(8).fill(1), ...Array(10).fill(0)])
    // Eight net pars of two points, ten net bogeys of one.
    expect(card.points).toBe(26)
  })

  it('counts no hole above net double bogey, and a ball picked up as that', () => {
    const scores = [11, null, ...Array(16).fill(4)]
    const card = cardOf(roundCard(links(71.1, 129), player(7.9), round(scores), 'grey'))
    expect([card.gross, card.net]).toEqual([null, null])
    // Par 4 with one stroke received: 7 at most (Rule 3.1).
    expect(card.adjustedGross).toBe(7 + 7 + 16 * 4)
    expect(card.holes.slice(0, 2).map(({ points }) => points)).toEqual([0, 0])
  })

  it('says why there is none', () => {
    const missing = (answer: ReturnType<typeof roundCard>): string =>
      'missing' in answer ? answer.missing : ''
    const whole = round(Array(18).fill(5))
    expect(missing(roundCard(links(71.1, 129), player(8), round(Array(9).fill(5)), 'grey'))).toContain(
      '9 holes',
    )
    expect(missing(roundCard(links(null, 129), player(8), whole, 'grey'))).toContain('does not rate')
    expect(missing(roundCard(links(71.1, 129), player(8), whole, null))).toContain('does not rate')
  })
})

describe('two rounds as a match', () => {
  it('gives the difference of the handicaps on the hardest holes, and ends when it is decided', () => {
    // Index 7.9 and 27.7 on the published tees: course handicaps 8.12 and 30.7, so 8 and 31 (whs_worked_examples.csv); 23 strokes.
    const own = { player: player(7.9), round: round(Array(18).fill(4)), tee: 'grey' }
    const theirs = { player: player(27.7), round: round(Array(18).fill(5)), tee: 'grey' }
    const match = matchOfRounds(links(71.1, 129), own, theirs)
    expect(match.received).toBe(-23)
    // Two strokes on holes 1 to 5 lose them, one on the rest ties.
    expect(match.holes.map(({ result }) => result)).toEqual([...Array(5).fill(-1), ...Array(13).fill(0)])
    expect(match).toMatchObject({ up: -5, left: 4, isOver: true })
    expect(matchOfRounds(links(71.1, 129), theirs, own)).toMatchObject({ up: 5, left: 4, received: 23 })
  })

  it('is over eighteen holes where the log stops at the green on which it was decided', () => {
    const own = { player: player(10), round: round([...Array(13).fill(4), 3]), tee: 'grey' }
    const theirs = { ...own, round: round([...Array(4).fill(5), ...Array(10).fill(4)]) }
    // Four up after thirteen, five after fourteen: won by five with four to play.
    expect(matchOfRounds(links(71.1, 129), own, theirs)).toMatchObject({ up: 5, left: 4, isOver: true })
  })

  it('says why nobody receives strokes where the tees are not rated', () => {
    const own = { player: player(10), round: round([4, 4]), tee: 'grey' }
    const theirs = { ...own, player: player(20) }
    const said = (courseRating: number | null): string | undefined =>
      cardLines({ card: { missing: '' }, match: matchOfRounds(links(courseRating, 129), own, theirs) }).at(-1)
    expect(said(null)).toContain('nobody receiving strokes, since the course file does not rate the tees')
    expect(said(71.1)).toMatch(/\d+ strokes given/)
  })

  it('ends at a hole that the other has not logged, and a ball picked up loses to any score', () => {
    const own = { player: player(10), round: round([4, null, 4]), tee: 'grey' }
    const match = matchOfRounds(links(71.1, 129), own, { ...own, round: round([5, 7]) })
    expect(match.holes.map(({ result }) => result)).toEqual([1, -1])
    expect(match).toMatchObject({ up: 0, left: 7, isOver: false })
  })
})
