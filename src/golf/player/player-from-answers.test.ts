import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { encodePlayer } from './encode-player.ts'
import { mirrorPlayer } from './mirror-player.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'
import type { PlayerFile } from './player-file.ts'
import { faultOf, playerFromAnswers } from './player-from-answers.ts'
import { type Answers, FIELDS, type FieldId, QUESTIONS } from './player-questions.ts'

const NEEDED: Answers = { name: 'Wren', hand: 'right', handicapIndex: '20' }
const fileFrom = (answers: Answers, units: 'yards' | 'metres' = 'yards'): PlayerFile => {
  const { file, faults } = playerFromAnswers({ ...NEEDED, ...answers }, units)
  if (file === null) throw new Error(faults[0]?.message)
  return file
}
const playerFrom = (answers: Answers): Player => completePlayer(fileFrom(answers))

const choice = (id: FieldId): fc.Arbitrary<string> =>
  fc.constantFrom('', ...(FIELDS.find((field) => field.id === id)?.choices ?? []).map(({ value }) => value))
/** Answers that somebody may give, any of them left open but the two that are needed. */
const answersOf: fc.Arbitrary<Answers> = fc.record({
  name: fc.constant('Wren'),
  hand: fc.constantFrom('right', 'left'),
  age: fc.constantFrom('', '11', '44'),
  sex: choice('sex'),
  handicapIndex: fc.constantFrom('', '-2', '17,6', '40'),
  usualScore: fc.constantFrom('80', '101'),
  bag: fc.constantFrom('', 'driver, 3w, 4h, 6i-PW, SW', '7 iron; putter'),
  carries: fc.constantFrom('', 'driver 190, 7i 126', '7-iron: 120 m'),
  shape: choice('shape'),
  bigMiss: choice('bigMiss'),
  mishits: choice('mishits'),
  upAndDown: choice('upAndDown'),
  halfHoled: choice('halfHoled'),
})

describe('the ten questions', () => {
  it('are ten, each field once, choices told apart', () => {
    expect(QUESTIONS).toHaveLength(10)
    expect(new Set(FIELDS.map(({ id }) => id)).size).toBe(FIELDS.length)
    for (const { choices = [] } of FIELDS) {
      expect(new Set(choices.map(({ value }) => value)).size).toBe(choices.length)
      expect(new Set(choices.map(({ words }) => words)).size).toBe(choices.length)
    }
    for (const { id, choices = [] } of FIELDS)
      for (const { value, words } of choices) {
        expect(faultOf(id, { ...NEEDED, [id]: value }, 'yards')).toBeNull()
        expect(faultOf(id, { ...NEEDED, [id]: words }, 'yards')).toBeNull()
      }
  })

  it('make a player of a name, a hand and an index alone, all of it guessed', () => {
    const file = fileFrom({})
    expect(file).toMatchObject({ name: 'Wren', hand: 'right', handicapIndex: 20, sex: 'unstated', clubs: [] })
    expect(file.said).toBeUndefined()
    expect(completePlayer(file).clubs.every((club) => club.isGuess)).toBe(true)
  })

  it('type facts and carries, and leave everything that was only said a guess', () => {
    const player = playerFrom({
      bag: 'driver, 5w, 7i, SW',
      carries: '7 Iron 138',
      shape: 'fade',
      bigMiss: 'right',
      mishits: 'every third',
      upAndDown: '4',
      halfHoled: '2',
    })
    expect(player.clubs.map(({ name }) => name)).toEqual(['driver', '5-wood', '7-iron', 'sand-wedge'])
    const iron = player.clubs.find(({ name }) => name === '7-iron')!
    expect(iron.carryMetres).toBeCloseTo(138 * 0.9144, 1)
    expect(iron.isGuess).toBe(false)
    expect(player.guesses.has('clubs.7-iron.carry_m')).toBe(false)
    for (const number of ['curve_share', 'right_share', 'mishit_share', 'direction_sd_deg', 'total_m'])
      expect(player.guesses.has(`clubs.7-iron.${number}`)).toBe(true)
    for (const number of ['shortGame.strokes_lost', 'putting.direction_sd_deg'])
      expect(player.guesses.has(number)).toBe(true)
    expect(player.said).toEqual({
      carries: ['7-iron'],
      shape: 'fade',
      big_miss: 'right',
      mishit_share: 0.333,
      up_and_down_share: 0.35,
      half_holed_m: 1.2,
    })
  })

  it('mirror a left-hander exactly: other hand and other side of the miss, the mirrored player', () => {
    fc.assert(
      fc.property(answersOf, (answers) => {
        const { hand, bigMiss } = answers
        const otherSide = bigMiss === 'left' ? 'right' : bigMiss === 'right' ? 'left' : (bigMiss ?? '')
        const mirrored = { ...answers, hand: hand === 'left' ? 'right' : 'left', bigMiss: otherSide }
        expect(playerFrom(mirrored)).toEqual(mirrorPlayer(playerFrom(answers)))
      }),
    )
  })

  it('come back from the written file as the same player', () => {
    fc.assert(
      fc.property(answersOf, (answers) => {
        const player = playerFrom(answers)
        expect(completePlayer(parsePlayer(encodePlayer(player), 'x'))).toEqual(player)
      }),
      { numRuns: 40 },
    )
  })

  it('take every answer or say what is wrong with it, whatever is typed', () => {
    const anything = fc.record(
      Object.fromEntries(FIELDS.map(({ id }) => [id, fc.string({ unit: 'binary' })])),
    )
    fc.assert(
      fc.property(anything, (answers) => {
        const { file, faults } = playerFromAnswers(answers, 'metres')
        expect(file === null).toBe(faults.length > 0)
        for (const { place, message, advice } of faults) {
          expect(FIELDS.some(({ id }) => id === place)).toBe(true)
          expect(message + advice).toMatch(/\.$/)
        }
      }),
    )
  })

  it('read the figures people write', () => {
    expect(fileFrom({ handicapIndex: '17,6' }).handicapIndex).toBe(17.6)
    for (const plus of ['+2', '-2', '−2', '–2'])
      expect(fileFrom({ handicapIndex: plus }).handicapIndex).toBe(-2)
    expect(fileFrom({ handicapIndex: '', usualScore: '93' }).said).toEqual({ usual_score: 93 })
    // An index says more than a score that was remembered.
    expect(fileFrom({ usualScore: '120' }).said).toBeUndefined()
  })

  it('read carries with and without a unit', () => {
    const carries = (text: string, units: 'yards' | 'metres'): (number | undefined)[] =>
      fileFrom({ carries: text }, units).clubs.map((club) => club.carry_m)
    expect(carries('driver 200, 7i 130', 'yards')).toEqual([182.9, 118.9])
    expect(carries('driver 200; 7i: 130 yd', 'metres')).toEqual([200, 118.9])
    expect(carries('Driver = 200m', 'yards')).toEqual([200])
  })

  it('read runs of irons and leave the putter out', () => {
    const bag = (text: string): string[] => fileFrom({ bag: text }).clubs.map(({ name }) => name)
    expect(bag('Dr, W3, 5-9 iron, pw, putter, 56°')).toEqual(
      'driver 3-wood 5-iron 6-iron 7-iron 8-iron 9-iron pitching-wedge 56-wedge'.split(' '),
    )
    expect(bag('7i – PW')).toEqual(['7-iron', '8-iron', '9-iron', 'pitching-wedge'])
  })

  it.each<[code: string, place: FieldId, answers: Answers]>([
    ['MAR-ANSWER-001', 'name', { name: ' ' }],
    ['MAR-ANSWER-001', 'hand', { hand: '' }],
    ['MAR-ANSWER-002', 'hand', { hand: 'both' }],
    ['MAR-ANSWER-002', 'shape', { shape: '9' }],
    ['MAR-ANSWER-003', 'age', { age: '2' }],
    ['MAR-ANSWER-003', 'handicapIndex', { handicapIndex: '55' }],
    ['MAR-ANSWER-003', 'usualScore', { handicapIndex: '', usualScore: 'ninety' }],
    ['MAR-ANSWER-003', 'carries', { carries: '7i 330' }],
    ['MAR-ANSWER-004', 'bag', { bag: 'driver, 5' }],
    ['MAR-ANSWER-004', 'carries', { carries: 'mashie 130' }],
    ['MAR-ANSWER-005', 'bag', { bag: '5i-8i, 7 iron' }],
    ['MAR-ANSWER-005', 'carries', { carries: '7i 130, iron 7 140' }],
    ['MAR-ANSWER-006', 'bag', { bag: 'driver,3w,5w,7w,9w,3h,4h,5h,6h,6i-PW' }],
    ['MAR-ANSWER-006', 'carries', { bag: '3w,5w,7w,9w,3h,4h,5h,6h,6i-PW', carries: 'sw 60' }],
    ['MAR-ANSWER-007', 'carries', { carries: '7i' }],
    ['MAR-ANSWER-007', 'carries', { carries: '7i 130, 9i 140' }],
    ['MAR-ANSWER-008', 'name', { name: 'Wren Loam', age: '17' }],
    ['MAR-ANSWER-008', 'name', { name: 'W'.repeat(61) }],
    ['MAR-ANSWER-009', 'carries', { handicapIndex: '' }],
  ])('%s at %s', (code, place, answers) => {
    const { file, faults } = playerFromAnswers({ ...NEEDED, ...answers }, 'yards')
    expect(file).toBeNull()
    expect(faults.map((fault) => [fault.code, fault.place])).toEqual([[code, place]])
  })

  it('take a first name with a hyphen from a minor, and the whole name of a grown-up', () => {
    expect(fileFrom({ name: 'Ann-Wren', age: '17' }).name).toBe('Ann-Wren')
    expect(fileFrom({ name: 'Wren  Loam', age: '18' }).name).toBe('Wren Loam')
  })
})
