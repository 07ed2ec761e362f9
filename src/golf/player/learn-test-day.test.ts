import { describe, expect, it } from 'vitest'
import { normalQuantile } from '#numbers/statistics/normal.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { completePlayer } from './complete-player.ts'
import { learnTestDay } from './learn-test-day.ts'
import {
  PUTTING_PRIOR_SD,
  READING_DIRECTION_SD_DEGREES,
  READING_DISTANCE_SD_SHARE,
  SHORT_PRIOR_SD,
  TEST_BALL_TELLS,
} from './near-green-settings.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'
import { puttOutcomes } from './putt-outcomes.ts'
import { puttingDistance } from './putting-distance.ts'
import { puttingValues } from './putting-values.ts'
import { shortGameValue } from './short-game-values.ts'
import { fitPuttingTest } from './test-day/fit-putting-test.ts'
import type { Leave, StationResult } from './test-day-results.ts'
import { STATIONS, type Station } from './test-day-stations.ts'

function golfer(handicapIndex: number): Player {
  return completePlayer(
    parsePlayer(JSON.stringify({ schema: 'player/1', name: 'Ilo', hand: 'right', handicapIndex }), 'test'),
  )
}

function putt(metres: number, balls: number, holed: number, leaves: readonly Leave[] = []): StationResult {
  const station: Station = {
    name: `putt-${metres}m`,
    kind: 'putt',
    lie: 'green',
    metres,
    balls,
    hasLeaves: leaves.length > 0,
  }
  return { station, balls, holed, leaves }
}

/** Plays every station of a test with the player's own spreads, ball by ball. */
function played(player: Player, next: () => number): StationResult[] {
  return STATIONS.map((station): StationResult => {
    const leaves: Leave[] = []
    let holed = 0
    for (let ball = 0; ball < station.balls; ball++) {
      if (station.kind === 'short') {
        // What a chip costs is spread about its mean by half a stroke; its leave is the putt that costs so much.
        const mean = shortGameValue(player, station.lie, station.metres)
        leaves.push({
          metres: puttingDistance(player, mean - 1 + 0.3 * normalQuantile(next())),
          isOffGreen: false,
        })
        continue
      }
      const {
        holed: chance,
        restMetres,
        weight,
      } = puttOutcomes(
        {
          directionSdDegrees: Math.hypot(player.putting.directionSdDegrees, READING_DIRECTION_SD_DEGREES),
          distanceSdShare: Math.hypot(player.putting.distanceSdShare, READING_DISTANCE_SD_SHARE),
        },
        station.metres,
        0.35,
      )
      let left = next()
      if (left < chance) {
        holed += 1
        continue
      }
      left -= chance
      const at = weight.findIndex((one) => {
        left -= one
        return left < 0
      })
      if (station.hasLeaves) leaves.push({ metres: restMetres[Math.max(0, at)] as number, isOffGreen: false })
    }
    return { station, balls: station.balls, holed, leaves }
  })
}

describe('a test day', () => {
  // Broadie, "Putts gained", and the tour putting table of the shared reference: one-putt chances of tour players by
  // distance, 3 ft 96 %, 5 ft 77 %, 8 ft 50 %, 10 ft 40 %, 20 ft 15 %. Two of them and thirty leaves teach the rest.
  it('learns tour putting from holed shares at two distances, and tells those at others', () => {
    const feet = (number: number): number => number * 0.3048
    const { player } = learnTestDay(golfer(0), {
      stations: [putt(feet(3), 1000, 960), putt(feet(8), 1000, 500), putt(feet(20), 1000, 150)],
    })
    const { shares } = puttingValues(player)
    expect(shares(feet(5))[0]).toBeGreaterThan(0.71)
    expect(shares(feet(5))[0]).toBeLessThan(0.82)
    expect(shares(feet(10))[0]).toBeGreaterThan(0.35)
    expect(shares(feet(10))[0]).toBeLessThan(0.44)
  })

  it('holds the truth in nine of ten intervals when players are drawn from what was assumed', () => {
    const next = seededGenerator(11)
    const before = golfer(15)
    const covered = { direction: 0, distance: 0, lost: 0 }
    const days = 60
    for (let day = 0; day < days; day++) {
      const truth: Player = {
        ...before,
        putting: {
          directionSdDegrees:
            before.putting.directionSdDegrees * Math.exp(PUTTING_PRIOR_SD * normalQuantile(next())),
          distanceSdShare:
            before.putting.distanceSdShare * Math.exp(PUTTING_PRIOR_SD * normalQuantile(next())),
        },
      }
      const learned = learnTestDay(before, { stations: played(truth, next) })
      const isIn = ([low, high]: readonly [number, number], value: number): number =>
        value >= low && value <= high ? 1 : 0
      covered.direction += isIn(learned.directionSdDegrees.ninety, truth.putting.directionSdDegrees)
      covered.distance += isIn(learned.distanceSdShare.ninety, truth.putting.distanceSdShare)
      covered.lost += isIn(learned.strokesLost.ninety, truth.shortGame.strokesLost)
    }
    // 60 trials at 0.9: a standard error of 0.039; three of them below. The strokes lost do not vary here: never too few.
    expect(covered.direction / days).toBeGreaterThan(0.78)
    expect(covered.distance / days).toBeGreaterThan(0.78)
    expect(covered.lost / days).toBeGreaterThan(0.78)
  })

  it('tells as much as a plan takes a test day to tell, and counts its balls', () => {
    const before = golfer(15)
    const next = seededGenerator(22)
    const days = 6
    let [putting, short] = [0, 0]
    for (let day = 0; day < days; day++) {
      const stations = played(before, next)
      const logs = fitPuttingTest(before, stations).map(({ putting: one, chance }) => ({
        at: Math.log(one.directionSdDegrees),
        chance,
      }))
      const mean = logs.reduce((sum, { at, chance }) => sum + chance * at, 0)
      putting += Math.sqrt(logs.reduce((sum, { at, chance }) => sum + chance * (at - mean) ** 2, 0)) / days
      const { strokesLost, player } = learnTestDay(before, { stations })
      short += (strokesLost.ninety[1] - strokesLost.ninety[0]) / 2 / normalQuantile(0.95) / days
      expect([player.putting.shots, player.shortGame.shots]).toEqual([42, 28])
      const twice = learnTestDay(player, { stations }).player
      expect([twice.putting.shots, twice.shortGame.shots]).toEqual([84, 56])
    }
    const left = (prior: number, information: number): number => 1 / Math.sqrt(1 / prior ** 2 + information)
    const priorShort = Math.hypot(SHORT_PRIOR_SD.share * before.shortGame.strokesLost, SHORT_PRIOR_SD.strokes)
    // Within a tenth: what was measured over three levels, rounded.
    expect(Math.abs(putting / left(PUTTING_PRIOR_SD, 42 * TEST_BALL_TELLS.puttSpread) - 1)).toBeLessThan(0.1)
    expect(Math.abs(short / left(priorShort, 28 * TEST_BALL_TELLS.strokesLost) - 1)).toBeLessThan(0.1)
  })

  it('moves towards what was played, less the fewer the balls, and keeps what was not tested', () => {
    const before = golfer(15)
    const poor = (balls: number): number =>
      learnTestDay(before, { stations: [putt(2, balls, balls * 0.2)] }).player.putting.directionSdDegrees
    expect(poor(10)).toBeGreaterThan(before.putting.directionSdDegrees)
    expect(poor(40)).toBeGreaterThan(poor(10))
    const onlyPutts = learnTestDay(before, { stations: [putt(2, 10, 5)] }).player
    expect(onlyPutts.shortGame).toEqual(before.shortGame)
    expect(onlyPutts.guesses.has('putting.direction_sd_deg')).toBe(false)
    expect(onlyPutts.guesses.has('shortGame.strokes_lost')).toBe(before.guesses.has('shortGame.strokes_lost'))
    const nothing = learnTestDay(before, { stations: [] }).player
    expect(nothing.putting).toEqual(before.putting)
    expect(nothing.guesses).toEqual(before.guesses)
  })

  it('gives the strokes lost that the balls cost when there are many, in closed form', () => {
    const before = golfer(20)
    const truth = { ...before, shortGame: { ...before.shortGame, strokesLost: 0.31 } }
    const station = STATIONS.find(({ name }) => name === 'chip-fairway-15m') as Station
    const leave = puttingDistance(before, shortGameValue(truth, 'fairway', 15) - 1)
    const balls = 4000
    const leaves = new Array<Leave>(balls).fill({ metres: leave, isOffGreen: false })
    const learned = learnTestDay(before, { stations: [{ station, balls, holed: 0, leaves }] })
    expect(learned.player.shortGame.strokesLost).toBeCloseTo(0.31, 2)
    expect(learned.shortShots).toBe(balls)
  })
})
