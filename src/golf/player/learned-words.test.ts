import { describe, expect, it } from 'vitest'
import { learnFromShots } from './learn-from-shots.ts'
import { changeLines, learnedRows, usedLines } from './learned-words.ts'
import type { PlayerFile } from './player-file.ts'
import type { ShotRecord } from './shot-record.ts'

const FILE: PlayerFile = {
  name: 'Two Clubs',
  hand: 'right',
  handicapIndex: 14,
  sex: 'unstated',
  bag: 'as-listed',
  clubs: [
    { name: '7-iron', carry_m: 130, shots: 40, lies: {} },
    { name: '9-iron', shots: 0, lies: {} },
  ],
  shortGame: {},
  putting: {},
}

/** Forty shots about a carry, spread alike every time. */
const shots = (carry: number): ShotRecord[] =>
  Array.from({ length: 40 }, (_, index) => ({
    date: null,
    club: '7-iron',
    lie: 'fairway' as const,
    carryMetres: carry + ((index * 7) % 19) - 9,
    totalMetres: null,
    offlineMetres: ((index * 5) % 17) - 8,
    strike: null,
  }))

describe('learnedRows', () => {
  it('says before and after with the range of a club that was hit, and no range for another', () => {
    const known = learnFromShots(FILE, shots(142))
    const [seven, nine] = learnedRows(known, 'metres')
    expect(seven).toMatchObject({ club: '7-iron', shots: 40, carry: { before: '130', wasGuess: false } })
    const [low, high] = seven!.carry.between!.map(Number)
    expect(low).toBeLessThanOrEqual(Number(seven!.carry.after))
    expect(high).toBeGreaterThanOrEqual(Number(seven!.carry.after))
    expect(low).toBeGreaterThan(130)
    // The spread to a side is the product of two learned numbers: its range is drawn, not multiplied.
    const spread = seven!.left.between!.map(Number)
    expect(spread[0]).toBeLessThan(Number(seven!.left.after))
    expect(spread[1]).toBeGreaterThan(Number(seven!.left.after))
    expect(nine!.carry.between).toBeNull()
    expect(nine!.carry.wasGuess).toBe(true)
    expect(Number(learnedRows(known, 'yards')[0]!.carry.before)).toBe(142)
  })
})

describe('changeLines', () => {
  it('tells a carry that was known and has really changed', () => {
    expect(changeLines(learnFromShots(FILE, shots(142)), 'metres')[0]).toMatch(
      /^7-iron, carry: \d+ m longer than was known; \d\d chances in 100$/,
    )
  })

  it('says so when a carry from memory was far off, whether or not it has changed since', () => {
    const remembered: PlayerFile = {
      ...FILE,
      said: { carries: ['7-iron'] },
      clubs: [{ name: '7-iron', carry_m: 130, shots: 0, lies: {} }],
    }
    const lines = changeLines(learnFromShots(remembered, shots(150)), 'metres')
    expect(lines[0]).toMatch(/^7-iron, carry: \d+ m longer than was known/)
    expect(lines.join()).not.toContain('not to be told')
  })

  it('says that shots do not tell, and that guesses cannot change', () => {
    expect(changeLines(learnFromShots(FILE, shots(130).slice(0, 2)), 'metres')).toEqual([
      expect.stringMatching(
        /^not to be told in \d numbers: too few shots, or no more than the known number may have been off$/,
      ),
    ])
    const guessed = { ...FILE, clubs: [{ name: '7-iron', shots: 0, lies: {} }] }
    expect(changeLines(learnFromShots(guessed, shots(130)), 'metres')).toEqual([
      'nothing to compare: the numbers before were guesses',
    ])
  })
})

describe('usedLines', () => {
  it('asks about the unit when every known carry moves by as much as a metre is more than a yard', () => {
    const many = (carry: number): ShotRecord[] => [...shots(carry), ...shots(carry)]
    const asked = (carry: number): readonly string[] => usedLines(learnFromShots(FILE, many(carry)))
    expect(asked(130 / 0.9144)).toEqual([
      expect.stringMatching(/\d+ % longer .* in yards and read as metres\?/),
    ])
    expect(asked(130 * 0.9144)).toEqual([
      expect.stringMatching(/\d+ % shorter .* in metres and read as yards\?/),
    ])
    expect(asked(134)).toEqual([])
    expect(asked(160)).toEqual([])
  })

  it('asks whose shots they are when they are far likelier in a mirror, after a side was known or said', () => {
    // A wide left side: 48 shots of which most lie to the left and further out, as was said; or the same in a mirror.
    const sided = (sign: number): ShotRecord[] =>
      [...shots(130), ...shots(130).slice(0, 8)].map((shot, index) => ({
        ...shot,
        offlineMetres: sign * (index % 4 === 0 ? 5 : -(index % 9) - 2),
      }))
    const asked = (file: PlayerFile, sign: number): readonly string[] =>
      usedLines(learnFromShots(file, sided(sign)))
    const said: PlayerFile = { ...FILE, said: { big_miss: 'left' } }
    const known: PlayerFile = {
      ...FILE,
      clubs: [{ name: '7-iron', carry_m: 130, shots: 40, left_share: 1.3, right_share: 0.7, lies: {} }],
    }
    for (const file of [said, known]) {
      expect(asked(file, -1)).toEqual([
        expect.stringMatching(/wider to the right, where the left .* right-handed/),
      ])
      expect(asked(file, 1)).toEqual([])
    }
    // Where nobody told a side a guess of the level's is no reason to ask.
    expect(asked(FILE, -1)).toEqual([])
    expect(asked(FILE, 1)).toEqual([])
  })

  it('asks whose first shots of a left-hander are where they show a side, and not where they show none', () => {
    const left: PlayerFile = { ...FILE, hand: 'left' }
    const leaning = shots(130).map((shot, index) => ({
      ...shot,
      offlineMetres: index % 4 === 0 ? -3 : 4 + (index % 9),
    }))
    expect(usedLines(learnFromShots(left, leaning))).toEqual([
      expect.stringMatching(/is the right with the 7-iron\. Were they hit left-handed/),
    ])
    expect(usedLines(learnFromShots(left, shots(130)))).toEqual([])
    expect(usedLines(learnFromShots(FILE, leaning))).toEqual([])
  })

  it('names clubs that the shots put into a guessed bag', () => {
    const { bag: _, ...filled } = FILE
    expect(usedLines(learnFromShots({ ...filled, clubs: [] }, shots(130)))).toEqual([
      'New in the bag by these shots: 7-iron.',
    ])
  })
})
