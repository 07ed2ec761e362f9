import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { METRES_PER_FOOT, METRES_PER_YARD } from '#numbers/units/units.ts'
import { parseLog } from './parse-log.ts'
import { parseRound } from './parse-round.ts'
import { hasScore, type RoundHole, type RoundStroke, scoreOf } from './round.ts'

const said = ({ club, finish, penalty }: RoundStroke): unknown => ({ club, finish, penalty })
const left = (letter: string, yards: number): unknown => ({ letter, leftMetres: yards * METRES_PER_YARD })

describe('a paper log', () => {
  it('reads a line a hole: club, letter of the finish, what was left; the last is holed', () => {
    const { round, faults } = parseLog(
      'date 2026-05-02\ntee: drift\n# windy\n7: driver f-180 / 5i r-25 / sw g-6 / 2 putts\n8: 3w p-150 / 7i g-18ft / putter g-1m / putter\n9: 7i x-90 +1 / pick up',
      'log',
    )
    expect(faults).toEqual([])
    expect(round).toMatchObject({ date: '2026-05-02', tee: 'drift' })
    const [seven, eight, nine] = round.holes
    expect(seven).toMatchObject({ ref: '7', putts: 2, isPickedUp: false, place: 'line 4' })
    expect(seven?.strokes.map(said)).toEqual([
      { club: 'driver', finish: left('f', 180), penalty: null },
      { club: '5-iron', finish: left('r', 25), penalty: null },
      { club: 'sand-wedge', finish: left('g', 6), penalty: null },
    ])
    expect(eight?.strokes.map(said)).toEqual([
      { club: '3-wood', finish: left('p', 150), penalty: null },
      { club: '7-iron', finish: { letter: 'g', leftMetres: 18 * METRES_PER_FOOT }, penalty: null },
      { club: 'putter', finish: { letter: 'g', leftMetres: 1 }, penalty: null },
      { club: 'putter', finish: null, penalty: null },
    ])
    expect(nine).toMatchObject({ isPickedUp: true, strokes: [{ club: '7-iron', penalty: 1 }] })
  })

  it('takes distances without a unit in the unit of the log', () => {
    const { round } = parseLog('unit metres\n1: i7 g-6 / 1 putt', 'log')
    expect(round.holes[0]?.strokes[0]?.finish).toEqual({ letter: 'g', leftMetres: 6 })
  })

  it('takes = for the card’s own club and line, after the club or in its place', () => {
    const { round, faults } = parseLog('7: driver= f-180 / = r-25 +1 / sw = g-6 / 7i g-3 / 1 putt', 'log')
    expect(faults).toEqual([])
    expect(round.holes[0]?.strokes.map(({ club, isAsPlanned }) => [club, isAsPlanned])).toEqual([
      ['driver', true],
      [null, true],
      ['sand-wedge', true],
      ['7-iron', false],
    ])
    expect(round.holes[0]?.strokes.map(said)[1]).toEqual({ club: null, finish: left('r', 25), penalty: 1 })
    expect(parseLog('7: spoon= f-180 / 2 putts', 'log').faults.map(({ place }) => place)).toEqual([
      'line 1, stroke 1, column 4',
    ])
  })

  it('gives no score to a line that ends before the ball is holed, and says so', () => {
    for (const line of [
      '7: driver f-180',
      '7: driver f-180 / 5i r-30 /',
      '7: driver p',
      '7: driver f-180 / 0 putts',
    ]) {
      const { round, faults } = parseLog(line, 'log')
      expect(faults.map(({ code }) => code)).toEqual(['MAR-ROUND-013'])
      expect(hasScore(round.holes[0] as RoundHole)).toBe(false)
    }
    for (const line of ['7: driver f-180 / 5i', '7: 9i', '7: driver f-180 / 2 putts /', '7: 4']) {
      const { round, faults } = parseLog(line, 'log')
      expect(faults).toEqual([])
      expect(hasScore(round.holes[0] as RoundHole)).toBe(true)
    }
    expect(scoreOf(parseLog('2: 9i g-3 / 2 putts /', 'log').round.holes[0] as RoundHole)).toBe(3)
  })

  it('gives no score to what is none, and none to a line whose end cannot be read', () => {
    for (const score of ['0', '99', '-4', '4.5']) {
      const { round, faults } = parseLog(`6: 4\n7: ${score}`, 'log')
      expect(round.holes.map(({ ref }) => ref)).toEqual(['6'])
      expect(faults).toMatchObject([{ code: 'MAR-ROUND-007', message: `"${score}" is no score of a hole.` }])
    }
    for (const line of ['7: nine', '7: driver f-180 / 5i g-5 / 2 pitts']) {
      const { round, faults } = parseLog(line, 'log')
      expect(faults).toHaveLength(1)
      expect(hasScore(round.holes[0] as RoundHole)).toBe(false)
    }
  })

  it('takes dashes as telephones set them, and a letter alone', () => {
    const { round, faults } = parseLog('7: driver f–180 / o / 5i g—5 / 2 putts', 'log')
    expect(faults).toEqual([])
    expect(scoreOf(round.holes[0] as RoundHole)).toBe(6)
    expect(round.holes[0]?.strokes[0]).toMatchObject({ club: 'driver', finish: left('f', 180) })
  })

  it('says where a line does not make sense, keeps the rest, and counts a stroke that cannot be read', () => {
    const { round, faults } = parseLog(
      '7: driver f-180 / spoon r-25 / sw q-6 / 5i g-far / 2 putts\nno hole here\n8:',
      'log',
    )
    expect(faults.map(({ code, place }) => `${code} ${place}`)).toEqual([
      'MAR-ROUND-007 line 1, stroke 2, column 19',
      'MAR-ROUND-007 line 1, stroke 3, column 32',
      'MAR-ROUND-007 line 1, stroke 4, column 41',
      'MAR-ROUND-006 line 2, column 1',
      'MAR-ROUND-006 line 3, column 3',
    ])
    expect(round.holes).toHaveLength(1)
    expect(round.holes[0]?.strokes.map(said)).toEqual([
      { club: 'driver', finish: left('f', 180), penalty: null },
      { club: null, finish: left('r', 25), penalty: null },
      { club: 'sand-wedge', finish: null, penalty: null },
      { club: '5-iron', finish: { letter: 'g', leftMetres: null }, penalty: null },
    ])
  })

  it('tells a date that is none, and is of no day then', () => {
    for (const date of ['2026-13-45', '2026-02-29', 'yesterday', '3 May 2026']) {
      const { round, faults } = parseLog(`date ${date}\n1: 5`, 'log')
      expect(round.date, date).toBeNull()
      expect(faults, date).toMatchObject([{ code: 'MAR-ROUND-006', place: 'line 1' }])
    }
    expect(parseLog('date 2028-02-29\n1: 5', 'log')).toMatchObject({
      round: { date: '2028-02-29' },
      faults: [],
    })
    const file = parseRound(
      '{"schema":"round/1","date":"2026-13-45","holes":[{"ref":"1","putts":2}]}',
      'file',
    )
    expect(file.round.date).toBeNull()
    expect(file.faults).toMatchObject([{ code: 'MAR-ROUND-004', place: 'date' }])
  })

  it('counts a hole once', () => {
    const { round, faults } = parseLog('1: 7i g-6 / 2 putts\n1: 7i g-6 / 1 putt', 'log')
    expect(round.holes).toHaveLength(1)
    expect(faults).toMatchObject([{ code: 'MAR-ROUND-005', place: 'line 2' }])
  })

  it('refuses a text without a hole', () => {
    expect(() => parseLog('hello\n', 'log')).toThrow(Failure)
  })

  it('keeps every good stroke of 200 damaged lines, and places every fault', () => {
    const random = seededGenerator(9)
    const pick = <One>(list: readonly One[]): One => list[Math.floor(random() * list.length)] as One
    const good = [
      'driver f-180',
      '5i r-140',
      '3w c-90',
      '7i b-20',
      'pw x-60',
      'sw h-12',
      '8i p-95',
      'driver o',
    ]
    const bad = ['drvier f-1801', '§§', '5i z-40', '7i r-', 'sw g-4000', '', 'banana f-10', '9i r-12q']
    for (let line = 0; line < 200; line++) {
      const entries = Array.from({ length: 4 }, () => pick(good))
      const damaged = Math.floor(random() * 4)
      const whole = parseLog(`5: ${[...entries, '2 putts'].join(' / ')}`, 'log')
      const broken = entries.with(damaged, pick(bad))
      const text = `5: ${[...broken, '2 putts'].join(' / ')}`
      const { round, faults } = parseLog(text, 'log')
      const strokes = round.holes[0]?.strokes ?? []
      expect(strokes, text).toHaveLength(4)
      expect(round.holes[0]?.putts, text).toBe(2)
      for (const [index, stroke] of strokes.entries())
        if (index !== damaged)
          expect(said(stroke), text).toEqual(said(whole.round.holes[0]?.strokes[index] as RoundStroke))
      expect(faults.length, text).toBeGreaterThan(0)
      for (const { place } of faults) expect(place, text).toContain(`line 1, stroke ${damaged + 1}, column`)
    }
  })
})
