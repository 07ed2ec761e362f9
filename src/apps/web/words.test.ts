import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import type { Flip } from '#golf/strategy/plan.ts'
import type { Reader } from './desk/desk.ts'
import { type FoundFlip, flipLabel, flipSentence, isFound, silentFlips } from './flip-words.ts'
import {
  compassPoint,
  firmnessWord,
  length,
  nextShot,
  shotLeft,
  sideways,
  strokes,
  windOnHole,
  windSpeed,
} from './words.ts'

const yards: Reader = { units: 'yards', windUnit: 'mph', theme: 'day', print: 'usual' }
const metres: Reader = { units: 'metres', windUnit: 'm/s', theme: 'day', print: 'usual' }
const hole = { areas: [{ name: "Heron's pond" }] } as unknown as Hole

describe('words', () => {
  it('gives lengths in the units of the reader, rounded once', () => {
    // 1 yd = 0.9144 m exactly (international agreement of 1959).
    expect(length(182.88, yards)).toBe('200 yd')
    expect(length(182.88, metres)).toBe('183 m')
    expect(sideways(-0.3, yards)).toBe('on the line')
    expect(sideways(-9.144, yards)).toBe('10 yd left')
    expect(sideways(9.144, metres)).toBe('9 m right')
  })

  it('gives strokes in sentences to a twentieth', () => {
    expect([5.31, 5.324, 5.33].map(strokes)).toEqual(['5.30', '5.30', '5.35'])
  })

  it('says how the wind blows on a hole by where it comes from', () => {
    expect(windOnHole(90, 90)).toBe('into')
    expect(windOnHole(270, 90)).toBe('behind')
    expect(windOnHole(0, 90)).toBe('from the left')
    expect(windOnHole(180, 90)).toBe('from the right')
    expect(windOnHole(350, 35)).toBe('into, from the left')
    expect(compassPoint(250)).toBe('west')
    expect(compassPoint(359)).toBe('north')
  })

  it('gives wind in the unit of the reader', () => {
    // 1 mph = 0.44704 m/s exactly.
    expect(windSpeed(8.9408, yards)).toBe('20 mph')
    expect(windSpeed(0, yards)).toBe('calm')
  })

  it('names firmness from soft to firm', () => {
    expect([0.4, 0.8, 1, 1.3, 1.7].map(firmnessWord)).toEqual([
      'soft',
      'a little soft',
      'normal',
      'a little firm',
      'firm',
    ])
  })
})

describe('words of the next shot', () => {
  it('says what is left to the pin in a straight line, and the lie', () => {
    const shot = {
      from: { x_m: 30, y_m: 160 },
      lie: 'first-cut',
      club: '5-wood',
      shape: 'stock',
      number: 'layup',
      distance_m: null,
      plays_m: null,
    } as const
    const there = { ...hole, pin: [0, 200] } as unknown as Hole
    expect(shotLeft(shot, there, metres)).toBe('50 m left to the pin, from the first cut')
    expect(nextShot(shot)).toBe('5-wood, a layup')
    expect(nextShot({ ...shot, number: 'back' })).toBe('5-wood to the back number')
  })
})

describe('words of flips', () => {
  const flip = (what: string, unit: string, direction: string, at: number | null): Flip => ({
    what,
    unit,
    direction,
    at,
    club: at === null ? null : 'driver',
  })
  const found = (...of: Parameters<typeof flip>): FoundFlip => flip(...of) as FoundFlip

  it('says what changes and how far', () => {
    expect(flipLabel(found('hazard:water-left', 'm', 'further', 11), hole, yards)).toBe(
      'water left 12 yd further',
    )
    expect(flipLabel(found("hazard:Heron's pond", 'm', 'nearer', 11), hole, metres)).toBe(
      "Heron's pond 11 m nearer",
    )
    expect(flipSentence(found('wind', 'm/s', 'into', 4), hole, metres)).toBe('4 m/s more into: the driver.')
    expect(flipLabel(found('wind', 'm/s', 'into', 0.3), hole, metres)).toBe('the least wind into')
    expect(flipLabel(found('spread', '×', 'tighter', 0.98), hole, metres)).toBe('spread a touch tighter')
    expect(flipSentence(found('spread', '×', 'wider', 1.3), hole, metres)).toBe(
      'Spread wider, × 1.3: the driver.',
    )
  })

  it('says in one sentence what was looked for and not found', () => {
    const flips = [
      flip('wind', 'm/s', 'behind', null),
      flip('spread', '×', 'wider', null),
      flip('wind', 'm/s', 'into', 3),
    ]
    expect(flips.map(isFound)).toEqual([false, false, true])
    expect(silentFlips(flips, hole)).toBe(
      'Within what is likely these would not change the club: wind behind, a wider spread.',
    )
    expect(silentFlips([flip('wind', 'm/s', 'into', 3)], hole)).toBeNull()
  })
})
