import { learnPlayer } from '../../src/golf/player/learn-player.ts'
import { lieEffect } from '../../src/golf/player/lie-effects.ts'
import type { Player } from '../../src/golf/player/player.ts'
import { hitFromLie, type LieTimes } from './hit-from-lie.ts'
import { hitShots } from './hit-shots.ts'
import { normals, truePlayer } from './true-player.ts'

type LieNumber = keyof LieTimes

/** The truth about one factor of one lie, beside what was learned of it. */
export interface LieTrial {
  readonly lie: string
  readonly number: LieNumber
  readonly shots: number
  readonly isInHalf: boolean
  readonly isInNinety: boolean
  /** How far truth and estimate lie from what was assumed, logarithms. */
  readonly truth: number
  readonly estimate: number
}

export interface LieStudy {
  readonly guesses: readonly Player[]
  readonly players: number
  /** Shots with every club from the fairway, and from each lie with every club that is used there. */
  readonly fairway: number
  readonly shots: readonly number[]
  readonly seed: number
}

/** What learning assumes of a player's own factors (`LIE_DOUBT`), written out once more: a study holds it against that. */
const DOUBT = {
  rough: { carry: 0.04, direction: 0.15, distance: 0.15, mishit: 0.25 },
  bunker: { carry: 0.06, direction: 0.15, distance: 0.15, mishit: 0.25 },
} as const
const LIES = Object.keys(DOUBT) as (keyof typeof DOUBT)[]
const NUMBERS = ['carry', 'direction', 'distance', 'mishit'] as const

/** Draws players and their own factors of lies from what is assumed, lets them hit, learns both, and looks where the truth lies. */
export function lieTrials(study: LieStudy): readonly LieTrial[] {
  const trials: LieTrial[] = []
  for (let player = 0; player < study.players; player++) {
    const guess = study.guesses[player % study.guesses.length] as Player
    const seed = study.seed + player
    const truth = truePlayer(guess, seed)
    const normal = normals(seed + 0.625)
    const own = LIES.map((lie) => {
      const drawn = NUMBERS.map((number) => [number, Math.exp(DOUBT[lie][number] * normal())] as const)
      return { lie, times: Object.fromEntries(drawn) as Record<LieNumber, number> }
    })
    for (const shots of study.shots) {
      const hit = own.flatMap(({ lie, times }, index) =>
        hitFromLie(truth, guess, lie, times, shots, seed + 100_000 * (index + 1)).filter(
          ({ club }) => lieEffect(lie, club, guess).allowed,
        ),
      )
      const learned = learnPlayer(guess, [...hitShots(truth, guess, study.fairway, seed), ...hit])
      for (const { lie, factors } of learned.lies)
        for (const number of NUMBERS) {
          const { before, after, half, ninety } = factors[number]
          const times = own.find((one) => one.lie === lie)?.times[number] ?? Number.NaN
          const value = before * times
          trials.push({
            lie,
            number,
            shots,
            isInHalf: value >= half[0] && value <= half[1],
            isInNinety: value >= ninety[0] && value <= ninety[1],
            truth: Math.log(times),
            estimate: Math.log(after / before),
          })
        }
    }
  }
  return trials
}
