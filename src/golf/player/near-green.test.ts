import { describe, expect, it } from 'vitest'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { LIES } from './player.ts'
import { priorPutting, priorStrokesLost } from './prior-near-green.ts'
import { puttOutcomes } from './putt-outcomes.ts'
import { puttingValues } from './putting-values.ts'
import { shortGameShares } from './short-game-shares.ts'
import { type ShortGamePlayer, shortGameValue } from './short-game-values.ts'

const level = (handicap: number): ShortGamePlayer => ({
  putting: priorPutting(handicap),
  shortGame: { strokesLost: priorStrokesLost(handicap) },
})
const METRES = Array.from({ length: 240 }, (_, index) => 0.25 * (index + 1))

describe('puttOutcomes', () => {
  it('agrees with putts played one by one, inside four standard errors', () => {
    const putting = { directionSdDegrees: 1.8, distanceSdShare: 0.1 }
    const uniform = seededGenerator(11)
    const normal = (): number => normalQuantile(Math.max(1e-12, uniform()))
    // Ramp test at 10 ft: 1.83²/(2 · 3.048 m) = 0.5494 m/s²; capture 1.63 (1 − (δ/R)²), R = 4¼ in / 2.
    const deceleration = 1.83 ** 2 / (2 * 3.048)
    const tries = 40_000
    for (const distance of [0.8, 2, 6, 15]) {
      let holed = 0
      let left = 0
      let leftSquared = 0
      for (let putt = 0; putt < tries; putt += 1) {
        const rolls = (distance + 0.35) * (1 + putting.distanceSdShare * normal())
        const angle = (putting.directionSdDegrees * Math.PI * normal()) / 180
        const offset = distance * Math.sin(angle)
        const speed = Math.sqrt(Math.max(0, 2 * deceleration * (rolls - distance)))
        const falls = rolls >= distance && speed <= 1.63 * (1 - (offset / 0.053975) ** 2)
        const rest = falls ? 0 : Math.hypot(rolls * Math.cos(angle) - distance, rolls * Math.sin(angle))
        holed += Number(falls)
        left += rest
        leftSquared += rest * rest
      }
      const outcomes = puttOutcomes(putting, distance, 0.35)
      const share = holed / tries
      expect(Math.abs(outcomes.holed - share), `${distance} m`).toBeLessThan(
        4 * Math.sqrt((share * (1 - share)) / tries),
      )
      const computed = outcomes.restMetres.reduce(
        (sum, rest, index) => sum + rest * (outcomes.weight[index] ?? 0),
        0,
      )
      const error = Math.sqrt((leftSquared / tries - (left / tries) ** 2) / tries)
      // Five strata of direction leave a small error of their own.
      expect(Math.abs(computed - left / tries), `${distance} m`).toBeLessThan(4 * error + 0.01 * computed)
    }
  })

  it('accounts for every ball', () => {
    for (const distance of [0.1, 1, 10, 60]) {
      const { holed, weight } = puttOutcomes({ directionSdDegrees: 2, distanceSdShare: 0.12 }, distance, 0.25)
      expect(holed + weight.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12)
    }
  })
})

describe('puttingValues', () => {
  it('never falls with distance, is never under one, and is worse for worse putters', () => {
    const tour = puttingValues(level(-5))
    const club = puttingValues(level(20))
    const steps = METRES.map((metres) => tour.expected(metres) - tour.expected(metres - 0.25))
    expect(Math.min(...steps)).toBeGreaterThanOrEqual(0)
    expect(Math.min(...METRES.map((metres) => tour.expected(metres)))).toBeGreaterThanOrEqual(1)
    const gaps = METRES.map((metres) => club.expected(metres) - tour.expected(metres))
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(-1e-9)
    expect(tour.expected(0)).toBe(1)
    expect(tour.expected(90)).toBe(tour.expected(60))
  })

  it('has shares that add up and agree with the expectation where four putts are rare', () => {
    for (const handicap of [-5, 20]) {
      const putting = puttingValues(level(handicap))
      for (const metres of METRES) {
        const [one, two, three] = putting.shares(metres)
        expect(one + two + three).toBeCloseTo(1, 9)
        expect(Math.min(one, two, three)).toBeGreaterThanOrEqual(0)
        if (metres > 20) continue
        // Three or more count as three here, so the expectation is at least this.
        expect(one + 2 * two + 3 * three).toBeLessThan(putting.expected(metres) + 0.02)
        expect(one + 2 * two + 3 * three).toBeGreaterThan(putting.expected(metres) - 0.05)
      }
    }
  })
})

describe('shortGameValue', () => {
  it('rises with distance from every lie, at every level, without jumps', () => {
    for (const handicap of [-5, 0, 17.6, 40]) {
      for (const lie of LIES) {
        const values = [...METRES, 60.25].map((metres) => shortGameValue(level(handicap), lie, metres))
        const steps = values.slice(1).map((value, index) => value - (values[index] ?? 0))
        expect(Math.min(...steps), lie).toBeGreaterThanOrEqual(0)
        // Only a putt from inside two metres changes faster than this in a quarter of a metre.
        expect(Math.max(...steps.slice(8)), lie).toBeLessThan(0.08)
      }
    }
  })

  it('orders the lies: fringe, fairway, first cut, rough, heavy, trees, scrub', () => {
    for (const handicap of [-5, 10, 36]) {
      for (const metres of METRES) {
        const values = (['fringe', 'fairway', 'first-cut', 'rough', 'heavy', 'trees', 'scrub'] as const).map(
          (lie) => shortGameValue(level(handicap), lie, metres),
        )
        expect([...values].sort((a, b) => a - b)).toEqual(values)
      }
    }
  })

  it('is worse for worse players, and a green is putted', () => {
    for (const lie of LIES) {
      expect(shortGameValue(level(20), lie, 20)).toBeGreaterThan(shortGameValue(level(5), lie, 20))
    }
    expect(shortGameValue(level(10), 'green', 7)).toBe(puttingValues(level(10)).expected(7))
  })
})

describe('shortGameShares', () => {
  it('adds up to one with the value as its mean, from every lie and level', () => {
    for (const handicap of [-5, 0, 17.6, 40, 54]) {
      for (const lie of LIES) {
        for (const metres of [0.3, 1, 3, 8, 15, 30, 45, 60]) {
          const shares = shortGameShares(level(handicap), lie, metres)
          const where = `${lie} ${metres} m, index ${handicap}`
          expect(Math.min(...shares), where).toBeGreaterThanOrEqual(0)
          expect(
            shares.reduce((sum, share) => sum + share, 0),
            where,
          ).toBeCloseTo(1, 9)
          const mean = shares.reduce((sum, share, index) => sum + share * (index + 1), 0)
          expect(mean, where).toBeCloseTo(shortGameValue(level(handicap), lie, metres), 9)
        }
      }
    }
  })
})
