import { describe, expect, it } from 'vitest'
import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { type Slopes, simulateRoll } from '#golf/ball/simulate-roll.ts'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { type GreenPutting, greenPutting, greenRolls } from './green-putting.ts'
import {
  MOST_SLOPE_STROKES,
  READING_BREAK_SHARE,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
} from './near-green-settings.ts'
import { priorPutting } from './prior-near-green.ts'
import { emptyScatter, scatterInto } from './putt-scatter.ts'
import { puttingValues } from './putting-values.ts'
import { atSpeed, paceOfSpeed, rollChart } from './roll-chart.ts'

const TOUR = { putting: priorPutting(-5) }
const CLUB = { putting: priorPutting(18) }
/** Rises towards +y: from below the hole (y < 0) a putt is uphill. */
const plane = (percent: number): Slopes => ({ gradientAt: () => [0, percent / 100] })
const BUMPY: Slopes = {
  gradientAt: (x, y) => [0.02 * Math.sin(x / 3) + 0.01, 0.02 * Math.cos(y / 4 + x / 6) - 0.005],
}

function onGreen(slopes: Slopes, feet: number, player = TOUR, reachMetres = 12): GreenPutting {
  return greenPutting(player, greenRolls({ slopes, hole: [0, 0], slowing: greenSlowing(feet), reachMetres }))
}

describe('a putt on a slope', () => {
  it('agrees with putts rolled one by one, inside four standard errors', () => {
    const uniform = seededGenerator(21)
    const normal = (): number => normalQuantile(Math.max(1e-12, uniform()))
    const slowing = greenSlowing(10)
    const tries = 1500
    const aim = { past: 0.35, slower: 0 }
    for (const slopes of [plane(0), plane(2.5), BUMPY])
      for (const from of [
        [0, -4],
        [3, 1],
        [-1, 7],
      ] as const) {
        const chart = rollChart(from, [0, 0], slopes, slowing)
        if (chart === null) expect.fail('no putt from here')
        const scatter = emptyScatter()
        scatterInto(scatter, chart, CLUB.putting, aim, slowing)
        const speed = Math.sqrt(2 * slowing * aim.past)
        const pace = paceOfSpeed(chart, speed, slowing)
        const line = atSpeed(chart, chart.line, speed)
        const paceSd = Math.hypot(
          CLUB.putting.distanceSdShare * pace,
          READING_DISTANCE_SD_SHARE * (chart.distance + aim.past),
        )
        const lineSd = Math.hypot(
          degreesToRadians(
            Math.hypot(
              CLUB.putting.directionSdDegrees,
              (READING_DIRECTION_SD_DEGREES * (chart.distance + aim.past)) / pace,
            ),
          ),
          READING_BREAK_SHARE * line,
        )
        let holed = 0
        let left = 0
        let leftSquared = 0
        for (let putt = 0; putt < tries; putt += 1) {
          const roll = simulateRoll(
            {
              x: from[0],
              y: from[1],
              headingRadians: chart.straightRadians + line + lineSd * normal(),
              speed: Math.sqrt(2 * slowing * Math.max(0, pace + paceSd * normal())),
            },
            slopes,
            slowing,
            [0, 0],
          )
          const rest = roll.isHoled ? 0 : Math.hypot(roll.x, roll.y)
          holed += Number(roll.isHoled)
          left += rest
          leftSquared += rest * rest
        }
        const share = holed / tries
        // The chart takes a ball that stops on the near half of the hole for short: a hundredth of a short putt.
        expect(Math.abs(scatter.holed - share), `${from}`).toBeLessThan(
          4 * Math.sqrt((share * (1 - share)) / tries) + 0.01,
        )
        let computed = 0
        for (let ball = 0; ball < scatter.count; ball += 1)
          computed += (scatter.weight[ball] ?? 0) * Math.hypot(scatter.x[ball] ?? 0, scatter.y[ball] ?? 0)
        const error = Math.sqrt((leftSquared / tries - (left / tries) ** 2) / tries)
        // Two strata of direction a side leave a small error of their own.
        expect(Math.abs(computed - left / tries), `${from}`).toBeLessThan(4 * error + 0.03 * computed)
      }
  })

  it('accounts for every ball', () => {
    const chart = rollChart([2, 5], [0, 0], BUMPY, greenSlowing(9))
    if (chart === null) expect.fail('no putt from here')
    const scatter = emptyScatter()
    scatterInto(scatter, chart, CLUB.putting, { past: 0.25, slower: 0.5 }, greenSlowing(9))
    const missed = scatter.weight.slice(0, scatter.count).reduce((sum, one) => sum + one, 0)
    expect(scatter.holed + missed).toBeCloseTo(1, 6)
  })
})

describe('greenPutting', () => {
  it('adds nothing on a level green, whatever its speed: the published table stands', () => {
    for (const feet of [6, 10, 14]) {
      const putting = onGreen(plane(0), feet)
      for (const [x, y] of [
        [0, 0],
        [0.2, 0.1],
        [1, -2],
        [-7, 3],
        [20, 20],
      ] as const) {
        expect(putting.strokesAt(x, y)).toBeCloseTo(0, 5)
        for (const share of putting.sharesAt(x, y)) expect(share).toBeCloseTo(0, 5)
      }
    }
  })

  it('has the same figures, mirrored, on a mirrored green', () => {
    const slopes = BUMPY
    const mirrored: Slopes = {
      gradientAt: (x, y) => {
        const [right, up] = slopes.gradientAt(-x, y)
        return [-right, up]
      },
    }
    const one = onGreen(slopes, 10)
    const other = onGreen(mirrored, 10)
    for (const [x, y] of [
      [1, 2],
      [-3, 5],
      [6, -8],
      [4, 0],
    ] as const) {
      expect(other.strokesAt(-x, y)).toBeCloseTo(one.strokesAt(x, y), 9)
      expect(other.sharesAt(-x, y)[0]).toBeCloseTo(one.sharesAt(x, y)[0], 9)
    }
  })

  // Orders of common practice: downhill is the dearer way, and more so on a faster or steeper green.
  it('three-putts less uphill than downhill, and less downhill on a slower green', () => {
    for (const player of [TOUR, CLUB]) {
      const three = (putting: GreenPutting, y: number): number => {
        const [one, two] = putting.sharesAt(0, y)
        return -one - two
      }
      const slow = onGreen(plane(2), 8, player)
      const fast = onGreen(plane(2), 12, player)
      for (const metres of [4.5, 6.5, 9]) {
        expect(three(fast, -metres)).toBeLessThan(three(fast, metres))
        expect(fast.strokesAt(0, -metres)).toBeLessThan(fast.strokesAt(0, metres))
        expect(three(slow, metres)).toBeLessThan(three(fast, metres))
        expect(slow.strokesAt(0, metres)).toBeLessThan(fast.strokesAt(0, metres))
        expect(slow.strokesAt(metres, 0)).toBeLessThan(fast.strokesAt(metres, 0))
      }
    }
  })

  it('holes fewer across a slope, the steeper the fewer', () => {
    const ones = [0, 1, 2, 3, 4, 5].map((percent) => onGreen(plane(percent), 10).sharesAt(4.5, 0)[0])
    for (const [index, one] of ones.entries()) if (index > 0) expect(one).toBeLessThan(ones[index - 1] ?? 0)
  })

  it('leaves longer putts past the hole downhill than uphill', () => {
    const slowing = greenSlowing(10)
    const leave = (y: number): number => {
      const chart = rollChart([0, y], [0, 0], plane(3), slowing)
      if (chart === null) return Number.NaN
      const scatter = emptyScatter()
      scatterInto(scatter, chart, CLUB.putting, { past: 0.5, slower: 0 }, slowing)
      let [sum, weight] = [0, 0]
      for (let ball = 0; ball < scatter.count; ball += 1) {
        // Past the hole is on its far side from where it was putted.
        if ((scatter.y[ball] ?? 0) * y > 0) continue
        weight += scatter.weight[ball] ?? 0
        sum += (scatter.weight[ball] ?? 0) * Math.abs(scatter.y[ball] ?? 0)
      }
      return sum / weight
    }
    expect(leave(6)).toBeGreaterThan(1.5 * leave(-6))
  })

  it('stays finite and bounded where no ball can stop', () => {
    for (const slopes of [plane(9), plane(14)]) {
      const putting = onGreen(slopes, 13, CLUB, 5)
      const table = puttingValues(CLUB)
      for (const [x, y] of [
        [0, 3],
        [0, -3],
        [2, 2],
        [-4, 0.5],
      ] as const) {
        expect(putting.strokesAt(x, y)).toBeLessThanOrEqual(MOST_SLOPE_STROKES)
        expect(table.expected(Math.hypot(x, y)) + putting.strokesAt(x, y)).toBeGreaterThan(0.99)
        for (const share of putting.sharesAt(x, y)) expect(Number.isFinite(share)).toBe(true)
      }
    }
  })
})
