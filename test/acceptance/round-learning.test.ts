import { beforeAll, describe, expect, it } from 'vitest'
import { type LearnedClub, learnPlayer } from '#golf/player/learn-player.ts'
import type { Player } from '#golf/player/player.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { addShots } from '#golf/round/shots-of-hole.ts'
import { holeGround } from '#golf/strategy/hole-model.ts'
import { CALM_DAY } from '#golf/strategy/invented-hole.fixture.ts'
import { smallHole, threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { type RoundTrial, roundTrials, shotsOfSimulated } from '../../tools/round-learning/round-trials.ts'

// The study of docs/recap.md, "How well rounds teach a pattern", in small: a short hole with a pond, trees, sand and a boundary.

const hole = smallHole(230, 26)
const guess = threeClubs()
/** Whose balls carry a twelfth further and stray half as wide again as anybody thought. */
const truth: Player = {
  ...guess,
  clubs: guess.clubs.map((club) => ({
    ...club,
    carryMetres: 1.08 * club.carryMetres,
    totalMetres: club.totalMetres + 0.08 * club.carryMetres,
    directionSdDegrees: 1.5 * club.directionSdDegrees,
  })),
}

describe('a player who is not whom the file says, learned from forty holes as they were written down', () => {
  let shots: readonly ShotRecord[]
  let learned: readonly LearnedClub[]
  beforeAll(() => {
    const random = seededGenerator(11)
    const ground = holeGround(hole)
    shots = addShots(
      Array.from({ length: 40 }, () =>
        shotsOfSimulated(ground, CALM_DAY, { guess, truth }, 'places', random),
      ),
    ).shots
    learned = learnPlayer(guess, shots).clubs
  })

  it('comes out as who they are: the truth in the interval, what was thought outside it', () => {
    const [first] = learned as [LearnedClub]
    const [own, thought] = [truth.clubs[0], guess.clubs[0]]
    expect(first.shots).toBeGreaterThan(60)
    const { carry, directionSd } = first.numbers
    expect(own?.carryMetres).toBeGreaterThan(carry.ninety[0])
    expect(own?.carryMetres).toBeLessThan(carry.ninety[1])
    expect(thought?.carryMetres).toBeLessThan(carry.ninety[0])
    expect(own?.directionSdDegrees).toBeGreaterThan(directionSd.ninety[0])
    expect(own?.directionSdDegrees).toBeLessThan(directionSd.ninety[1])
    expect(thought?.directionSdDegrees).toBeLessThan(directionSd.ninety[0])
  })

  it('would come out too straight if balls that came to grief were left out', () => {
    const dry = shots.filter(({ totalMetres }) => totalMetres !== null)
    expect(dry.length).toBeLessThan(0.9 * shots.length)
    const { directionSd } = learnPlayer(guess, dry).clubs[0]?.numbers ?? {}
    expect(directionSd?.after).toBeLessThan(0.93 * (learned[0]?.numbers.directionSd.after ?? 0))
  })
})

describe('players drawn from what is assumed', () => {
  let trials: readonly RoundTrial[]
  beforeAll(() => {
    trials = roundTrials({
      ...{ holes: [hole], day: CALM_DAY, guesses: [guess], players: 5, rounds: 25, seed: 40 },
      logging: 'places',
    }).filter(
      ({ number, shots }) => shots > 10 && ['carry', 'directionSd', 'carrySd', 'side'].includes(number),
    )
  })

  it('lie in what was learned of them about as often as is said', () => {
    expect(trials.length).toBeGreaterThan(15)
    const inside = trials.filter(({ isInNinety }) => isInNinety).length / trials.length
    // Clubs of one player hang together: five players tell nine in ten from seven in ten and no more.
    expect(inside).toBeGreaterThan(0.7)
  })

  it('come out nearer the truth than when every end is taken for a plain total', () => {
    const spread = (errors: readonly number[]): number =>
      Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length)
    for (const number of ['carry', 'directionSd', 'carrySd']) {
      const own = trials.filter((trial) => trial.number === number)
      const [whole, plain] = [own.map(({ error }) => error), own.map(({ plainError }) => plainError)]
      expect(spread(whole), number).toBeLessThan(spread(plain))
    }
  })
})
