import { beforeAll, describe, expect, it } from 'vitest'
import { completePlayer } from '../../src/golf/player/complete-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { calibrationTrials } from '../../tools/pattern-calibration/calibration-trials.ts'
import { chancesOfChange } from '../../tools/pattern-calibration/change-trials.ts'

const guessOf = (handicapIndex: number, sex: Player['sex']): Player =>
  completePlayer({
    name: 'small bag',
    hand: 'right',
    sex,
    handicapIndex,
    bag: 'as-listed',
    clubs: ['driver', '7-iron'].map((name) => ({ name, shots: 0, lies: {} })),
    shortGame: {},
    putting: {},
  })

/** A small part of the study of docs/pattern-calibration.md: bounds are four standard errors of that many players. */
describe('a learned pattern', () => {
  const players = 20
  let trials: ReturnType<typeof calibrationTrials> = []
  beforeAll(() => {
    trials = calibrationTrials({
      guesses: [guessOf(5, 'male'), guessOf(25, 'female')],
      players,
      shots: [8, 60],
      seed: 40_000,
    })
  })
  const share = (isIn: (trial: (typeof trials)[number]) => boolean): number =>
    trials.filter(isIn).length / trials.length

  // A player's clubs and shots hang together: each of eight numbers of a player is one independent look at least.
  it('holds the truth in its intervals as often as they say', () => {
    const error = (p: number): number => Math.sqrt((p * (1 - p)) / (8 * players))
    expect(Math.abs(share(({ isInHalf }) => isInHalf) - 0.5)).toBeLessThan(4 * error(0.5))
    expect(Math.abs(share(({ isInNinety }) => isInNinety) - 0.9)).toBeLessThan(4 * error(0.9))
  })

  it('has the truth as often over as under its middle, number by number', () => {
    for (const number of new Set(trials.map((trial) => trial.number))) {
      const own = trials.filter((trial) => trial.number === number)
      const mean = own.reduce((sum, { rank }) => sum + rank, 0) / own.length
      // A uniform rank has variance 1/12.
      expect(Math.abs(mean - 0.5), number).toBeLessThan(4 / Math.sqrt(12 * players))
    }
  })

  it('is surer with more shots', () => {
    for (const number of new Set(trials.map((trial) => trial.number))) {
      const width = (shots: number): number =>
        trials
          .filter((trial) => trial.number === number && trial.shots === shots)
          .reduce((sum, trial) => sum + trial.width, 0)
      expect(width(60), number).toBeLessThan(width(8))
    }
  })

  // A chance is right on average: its mean over what changed and did not is the share that changed.
  it('calls as many numbers changed as have changed', () => {
    const chances = chancesOfChange({
      guesses: [guessOf(5, 'male'), guessOf(25, 'female')],
      players: 8,
      before: 80,
      after: 60,
      seed: 60_000,
    })
    const changed = chances.filter(({ hasChanged }) => hasChanged)
    const unchanged = chances.filter(({ hasChanged }) => !hasChanged)
    const mean = (of: typeof chances): number => of.reduce((sum, { chance }) => sum + chance, 0) / of.length
    const error = Math.sqrt((0.25 * 0.75) / chances.length)
    expect(Math.abs(mean(chances) - changed.length / chances.length)).toBeLessThan(4 * error)
    expect(mean(changed)).toBeGreaterThan(mean(unchanged) + 0.1)
  })
})
