import { describe, expect, it } from 'vitest'
import { completePlayer } from '../../src/golf/player/complete-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { holeGround } from '../../src/golf/strategy/hole-model.ts'
import { choiceHole } from '../../tools/false-clear/choice-hole.ts'
import { type Called, clubCosts, verdictOn } from '../../tools/false-clear/club-costs.ts'
import { tallyOf } from '../../tools/false-clear/false-clear-table.ts'
import { falseClearTrials, studyPlayer } from '../../tools/false-clear/false-clear-trials.ts'
import { learnedPlayer } from '../../tools/false-clear/learned-player.ts'

// A plan says "too close to call" where it is, and "clear" only where it is. The whole study: `npm run false-clear-study`.

const CELL_METRES = 8
const DRAWS = 16

/** Verdicts on one player by the number of shots behind every club. */
function verdictsAfter(player: Player, shots: readonly number[]): Called[] {
  const costs = clubCosts(holeGround(choiceHole(10), CELL_METRES), player)
  return shots.map((count) => {
    const clubs = player.clubs.map((club) => ({ ...club, shots: count, isGuess: false }))
    return verdictOn({ ...costs, solved: { ...costs.solved, player: { ...player, clubs } } }, DRAWS)
  })
}

describe('a verdict', () => {
  it('calls near-equal clubs too close, however many shots there are', () => {
    const club = { carry_m: 128, total_m: 136, shots: 0, lies: {} }
    const twins = completePlayer({
      name: 'twins',
      hand: 'right',
      sex: 'male',
      handicapIndex: 15,
      bag: 'as-listed',
      clubs: [
        { ...club, name: '6-iron' },
        { ...club, name: '7-iron', carry_m: 127.5 },
      ],
      shortGame: {},
      putting: {},
    })
    for (const { verdict, gap } of verdictsAfter(twins, [10, 100, 100_000])) {
      expect(gap).toBeLessThan(0.03)
      expect(verdict).toBe('too-close')
    }
  })

  it('tells clubs apart that truly differ once there are ten times the shots', () => {
    const [few, many] = verdictsAfter(studyPlayer(), [5, 50])
    expect(few?.gap).toBeGreaterThan(0.03)
    expect(many?.gap).toBe(few?.gap)
    expect([few?.verdict, many?.verdict]).toEqual(['too-close', 'close'])
  })
})

describe('the study of false clear verdicts', () => {
  it('finds some choices clear in a small one, and none of them wrong', () => {
    const trials = falseClearTrials({ players: 4, shots: [100], draws: DRAWS, cellMetres: CELL_METRES })
    expect(trials).toHaveLength(4)
    expect(tallyOf(trials, 'clear').count).toBeGreaterThan(0)
    expect(tallyOf(trials, 'clear').wrong).toBe(0)
  })

  // By the closed form a mean of n good strikes is known to spread/√n, and the prior no longer matters.
  it('learns the true player from many shots, and nothing from none', () => {
    const prior = studyPlayer()
    const club = prior.clubs[0]
    if (!club) throw new Error('the study player has clubs')
    const truth: Player = {
      ...prior,
      clubs: prior.clubs.map((one) => ({
        ...one,
        carryMetres: one.carryMetres * 1.06,
        directionSdDegrees: one.directionSdDegrees * 1.3,
        leftShare: one.leftShare * 1.2,
        rightShare: one.rightShare / 1.2,
        mishitShare: one.mishitShare * 1.5,
      })),
    }
    const [learned] = learnedPlayer(prior, truth, 20_000, 1).clubs
    expect((learned?.carryMetres ?? 0) / club.carryMetres).toBeCloseTo(1.06, 2)
    expect((learned?.directionSdDegrees ?? 0) / club.directionSdDegrees).toBeCloseTo(1.3, 1)
    expect((learned?.leftShare ?? 0) / club.leftShare).toBeCloseTo(1.2, 1)
    expect((learned?.mishitShare ?? 0) / club.mishitShare).toBeCloseTo(1.5, 1)
    expect(learnedPlayer(prior, truth, 0, 1)).toBe(prior)
  })
})
