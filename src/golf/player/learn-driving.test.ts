import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { learnPlayer } from './learn-player.ts'
import type { Club, Player } from './player.ts'
import { DOUBT, MISHIT_SPREAD_CORRELATION } from './settings.ts'

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length
const squaresAbout = (values: readonly number[], centre: number): number =>
  values.reduce((sum, one) => sum + (one - centre) ** 2, 0)

/**
 * Nine golfers with fifteen drives each, of the published experiment in the reference folder. Its unit is not stated:
 * a share has none. Golfers 1 and 3 have the same fifteen numbers there, and 4 most of golfer 2's.
 */
function golfers(): readonly (readonly number[])[] {
  const file = '../../../test/fixtures/reference/driving_experiment_135.csv'
  const [, ...lines] = readFileSync(new URL(file, import.meta.url), 'utf8')
    .trim()
    .split('\n')
  const rows = lines.map((line) => line.replaceAll('"', '').split(',').map(Number))
  return Array.from({ length: 9 }, (_, index) =>
    rows.filter(([id]) => id === index + 1).map(([, , distance]) => distance!),
  )
}

/** A player of index 10 with a driver that is thought to carry so far, all guessed. */
function driverOf(carryMetres: number): Player {
  const guess = completePlayer({
    name: 'golfer',
    hand: 'right',
    sex: 'male',
    handicapIndex: 10,
    bag: 'as-listed',
    clubs: [{ name: 'driver', shots: 0, lies: {} }],
    shortGame: {},
    putting: {},
  })
  return {
    ...guess,
    clubs: guess.clubs.map((club) => ({ ...club, carryMetres, totalMetres: carryMetres + 15 })),
  }
}

function learnedSpread(player: Player, drives: readonly number[]): number {
  const shots = drives.map((carryMetres) => ({
    date: null,
    club: 'driver',
    lie: 'tee' as const,
    carryMetres,
    totalMetres: null,
    offlineMetres: null,
    strike: 'good' as const,
  }))
  return learnPlayer(player, shots, { isTrusted: true }).clubs[0]!.numbers.carrySd.after
}

/** Chance that none of so many strikes is a mishit, for a player whose spread lies `b` standard deviations up: who strays more mishits more. */
function noneMishit(count: number, club: Club, b: number): number {
  const { shared, own } = DOUBT.mishit.guess
  const spread = DOUBT.spread.guess
  const sd = Math.hypot(shared, own)
  const correlation =
    (MISHIT_SPREAD_CORRELATION * shared * spread.shared) / (sd * Math.hypot(spread.shared, spread.own))
  let [weights, sum] = [0, 0]
  for (let k = -40; k <= 40; k++) {
    const rest = k / 8
    const odds =
      (club.mishitShare / (1 - club.mishitShare)) *
      Math.exp(sd * (correlation * b + Math.sqrt(1 - correlation ** 2) * rest))
    const weight = Math.exp(-(rest ** 2) / 2)
    weights += weight
    sum += weight / (1 + odds) ** count
  }
  return sum / weights
}

/** Posterior mean of the spread of carry, by adding up prior times likelihood over a grid of carries and spreads. */
function spreadByGrid(drives: readonly number[], club: Club): number {
  const carrySd = Math.hypot(DOUBT.carry.guess.shared, DOUBT.carry.guess.own)
  const spreadSd = Math.hypot(DOUBT.spread.guess.shared, DOUBT.spread.guess.own)
  const none = Array.from({ length: 121 }, (_, j) => noneMishit(drives.length, club, (j - 60) / 12))
  let [weights, sum] = [0, 0]
  for (let i = -60; i <= 60; i++)
    for (let j = -60; j <= 60; j++) {
      const [a, b] = [i / 12, j / 12]
      const carry = club.carryMetres * Math.exp(carrySd * a - carrySd ** 2 / 2)
      const spread = club.carrySdShare * Math.exp(spreadSd * b - spreadSd ** 2 / 2)
      const sd = carry * spread
      const log =
        -(a * a + b * b) / 2 - drives.length * Math.log(sd) - squaresAbout(drives, carry) / (2 * sd * sd)
      const weight = Math.exp(log + drives.length * Math.log(0.06 * club.carryMetres)) * none[j + 60]!
      weights += weight
      sum += weight * spread
    }
  return sum / weights
}

describe('learnPlayer on a published driving experiment', () => {
  it('knows each golfer’s spread after fifteen drives as the integral over the posterior says', () => {
    for (const drives of golfers()) {
      expect(drives).toHaveLength(15)
      const player = driverOf(meanOf(drives))
      const byGrid = spreadByGrid(drives, player.clubs[0]!)
      expect(Math.abs(learnedSpread(player, drives) / byGrid - 1)).toBeLessThan(0.015)
    }
  })

  it('comes to each golfer’s own spread when as many drives of the kind outweigh what was assumed', () => {
    for (const drives of golfers()) {
      const mean = meanOf(drives)
      const share = Math.sqrt(squaresAbout(drives, mean) / drives.length) / mean
      const many = Array.from({ length: 40 }, () => drives).flat()
      expect(Math.abs(learnedSpread(driverOf(mean), many) / share - 1)).toBeLessThan(0.03)
    }
  })
})
