import { describe, expect, it } from 'vitest'
import { type ClubRound, clubOf } from './club.ts'
import { clubBasis, clubTables, clubWords } from './club-words.ts'
import type { GamePart, HoleRecap, StrokeSplit } from './recap.ts'
import { recapRound } from './recap-round.ts'

const GREEN = { lie: 'green', ground: 'green' } as const
const FAIRWAY = { lie: 'fairway', ground: 'fairway' } as const

const stroke = (number: number, part: GamePart, decision = 0): StrokeSplit => ({
  number,
  count: 1,
  used: 1,
  penalty: 0,
  part,
  club: null,
  from: { point: [0, 0], ...(part === 'putting' ? GREEN : FAIRWAY) },
  pinMetres: 100,
  to: null,
  before: 1,
  chosen: null,
  after: 0,
  choice: null,
  plan: null,
  unsplit: [],
  decision,
  execution: 0.1,
  executionVariance: null,
  luck: 0,
})

/** A par 4 with one stroke from the tee and so many to the green, then two putts. */
const hole = (ref: string, approaches: number, decision = 0): HoleRecap => {
  const strokes = [
    stroke(1, 'tee', decision),
    ...Array.from({ length: approaches }, (_, index) => stroke(2 + index, 'approach')),
    stroke(2 + approaches, 'putting'),
    stroke(3 + approaches, 'putting'),
  ]
  const score = strokes.length
  const value = score - decision - 0.1 * score
  return {
    ref,
    par: 4,
    score,
    value,
    decision,
    execution: 0.1 * score,
    luck: 0,
    addsUp: 0,
    strokes,
    faults: [],
  }
}

const round = (
  member: number,
  holes: readonly HoleRecap[],
  tee: string | null = 'back',
  locations: ClubRound['locations'] = {},
): ClubRound => ({ member, tee, locations, recap: recapRound(holes) })

describe('clubOf', () => {
  it('shows no figure of fewer members than the minimum, however many rounds they kept', () => {
    const five = [0, 1, 2, 3, 4].map((member) => round(member, [hole('1', 1)]))
    const many = [0, 0, 0, 0, 0, 0, 1, 2, 3].map((member) => round(member, [hole('2', 3)]))
    const club = clubOf([...five, ...many], 5)
    expect(club.holes.map(({ ref, members }) => [ref, members])).toEqual([['1', 5]])
    expect(club).toMatchObject({ members: 5, rounds: 14, withheld: 1 })
    expect(clubOf([...five, ...many], 4).holes.map(({ ref }) => ref)).toEqual(['2', '1'])
  })

  it('leaves out all tees, and all locations of a hole, when one of them alone could be reckoned', () => {
    const places = (location: string) => ({ '1': location })
    const rounds = [
      ...[0, 1, 2].map((member) => round(member, [hole('1', 1)], 'back', places('front'))),
      ...[3, 4].map((member) => round(member, [hole('1', 2)], 'forward', places('back'))),
    ]
    const three = clubOf(rounds, 3)
    expect([three.tees, three.locations]).toEqual([[], []])
    const all = [...rounds, round(5, [hole('1', 2)], 'forward', places('back'))]
    const known = clubOf(all, 3)
    expect(known.tees.map(({ tee, members, greens }) => [tee, members, greens])).toEqual([
      ['back', 3, 1],
      ['forward', 3, 0],
    ])
    expect(known.locations.map(({ location }) => location)).toEqual(['front', 'back'])
    // One of whom neither is known could be reckoned from those of whom they are, and all of them.
    const rest = clubOf([...all, round(6, [hole('1', 4)], null)], 3)
    expect([rest.holes.length, rest.tees, rest.locations, rest.withheld]).toEqual([1, [], [], 4])
    const enough = [6, 7, 8].map((member) => round(member, [hole('1', 4)], null))
    expect(clubOf([...all, ...enough], 3).tees).toHaveLength(2)
  })

  it('weighs every member alike', () => {
    const rounds = [
      ...Array.from({ length: 20 }, () => round(0, [hole('1', 5, 1)])),
      round(1, [hole('1', 1)]),
      round(2, [hole('1', 1)]),
    ]
    const [first] = clubOf(rounds, 3).holes
    // 4 over, level, level.
    expect(first?.overPar).toBeCloseTo(4 / 3, 12)
    const tee = clubOf(rounds, 3).parts.find(({ part }) => part === 'tee')
    expect(tee?.choices).toBeCloseTo(18 / 3, 12)
    expect(tee?.struck).toBeCloseTo(18 * 0.1, 12)
  })

  it('says which hole is far from its stroke index, and from which markers few greens are reached', () => {
    const refs = Array.from({ length: 18 }, (_, index) => String(index + 1))
    const rounds = [0, 1, 2].map((member) =>
      round(
        member,
        refs.map((ref, index) => hole(ref, 2 + index)),
      ),
    )
    const club = clubOf(rounds, 3)
    // Hole 18 is the hardest, and its stroke index says so; hole 1 is the easiest and is said to be the second hardest.
    const indexes = Object.fromEntries(refs.map((ref, index) => [ref, 18 - index]))
    expect(clubWords(club, indexes)).toEqual([
      'From the back markers 0 greens in 100 are reached in par less two: markers further forward would give these members more to play for.',
    ])
    const wrong = { ...indexes, '1': 2, '17': 18 }
    expect(clubWords(club, wrong).slice(0, 2)).toEqual([
      expect.stringMatching(/^Hole 17 is number 2 of 18 by difficulty and number 18 by stroke index\./),
      expect.stringMatching(/^Hole 1 is number 18 of 18 by difficulty and number 2 by stroke index\./),
    ])
    const [, holes] = clubTables(club, indexes)
    expect(holes?.table.rows[0]).toEqual(['18', '4', '3', '+18.00', '+2.20', '1'])
    expect(clubBasis(club, false).join(' ')).toMatch(/fewer than 3 members/)
  })
})
