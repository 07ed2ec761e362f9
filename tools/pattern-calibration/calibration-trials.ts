import { type LearnedPlayer, learnPlayer } from '../../src/golf/player/learn-player.ts'
import type { Club, Player } from '../../src/golf/player/player.ts'
import { hitShots } from './hit-shots.ts'
import { truePlayer } from './true-player.ts'

export type Learned = keyof LearnedPlayer['clubs'][number]['numbers']

/** The truth about one number of one club, beside what was learned of it. */
export interface Trial {
  readonly player: number
  readonly shots: number
  readonly club: number
  readonly number: Learned
  readonly isInHalf: boolean
  readonly isInNinety: boolean
  /** Share of the draws under the truth. */
  readonly rank: number
  /** How far the estimate is from the truth, and how wide the 90 % interval is, as shares of the truth. */
  readonly error: number
  readonly width: number
}

export interface Study {
  /** What is known of each player before any shot, by turns. */
  readonly guesses: readonly Player[]
  readonly players: number
  /** Shots with every club. */
  readonly shots: readonly number[]
  readonly seed: number
}

/**
 * Simulation-based calibration (Talts et al., arXiv 1804.06788): draws players from what is assumed before any shot,
 * lets them hit shots, learns them, and looks where the truth lies in what was learned. Same study, same trials.
 */
export function calibrationTrials(
  study: Study,
  told: (players: number) => void = () => undefined,
): readonly Trial[] {
  const trials: Trial[] = []
  for (let player = 0; player < study.players; player++) {
    const guess = study.guesses[player % study.guesses.length] as Player
    const truth = truePlayer(guess, study.seed + player)
    for (const shots of study.shots) {
      const records = hitShots(truth, guess, shots, study.seed + player + 1_000_000 * shots, true)
      const learned = learnPlayer(guess, records, { seed: player + 1 })
      learned.clubs.forEach(({ numbers }, club) => {
        for (const number of Object.keys(numbers) as Learned[]) {
          const { half, ninety, draws, after } = numbers[number]
          const value = TRUTH[number](truth.clubs[club] as Club)
          trials.push({
            player,
            shots,
            club,
            number,
            isInHalf: value >= half[0] && value <= half[1],
            isInNinety: value >= ninety[0] && value <= ninety[1],
            rank: draws.reduce((under, one) => under + Number(one < value), 0) / draws.length,
            error: after / value - 1,
            width: (ninety[1] - ninety[0]) / value,
          })
        }
      })
    }
    told(player + 1)
  }
  return trials
}

/** Read here and not by the learner: what is checked must not say what is true. */
export const TRUTH: Readonly<Record<Learned, (club: Club) => number>> = {
  carry: (club) => club.carryMetres,
  run: (club) => club.totalMetres - club.carryMetres,
  directionSd: (club) => club.directionSdDegrees,
  side: (club) => club.leftShare / (club.leftShare + club.rightShare),
  carrySd: (club) => club.carrySdShare,
  mishit: (club) => club.mishitShare,
  mishitCarry: (club) => club.mishitCarryShare,
  mishitCarrySd: (club) => club.mishitCarrySdShare,
}
