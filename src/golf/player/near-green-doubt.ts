import { NEAR_GREEN_DOUBT, TEST_BALL_TELLS } from './near-green-settings.ts'
import type { Player } from './player.ts'

/** How unsure a putting spread is, of its logarithm: as a guess, as typed, or as the putts of test days leave a guess. */
export function puttingDoubt(
  { putting, guesses }: Pick<Player, 'putting' | 'guesses'>,
  number: 'direction_sd_deg' | 'distance_sd_share',
): number {
  const putts = putting.shots ?? 0
  const { guess, typed } = NEAR_GREEN_DOUBT
  if (putts > 0) return guess.spread * leftOf(guess.spread, TEST_BALL_TELLS.puttSpread * putts)
  return (guesses.has(`putting.${number}`) ? guess : typed).spread
}

/** How unsure the strokes lost are: a part of their logarithm and one in strokes, which move together. */
export function strokesLostDoubt({ shortGame, guesses }: Pick<Player, 'shortGame' | 'guesses'>): {
  readonly share: number
  readonly strokes: number
} {
  const balls = shortGame.shots ?? 0
  const { guess, typed } = NEAR_GREEN_DOUBT
  if (balls === 0) return guesses.has('shortGame.strokes_lost') ? guess : typed
  const strokes = guess.share * Math.abs(shortGame.strokesLost) + guess.strokes
  const left = leftOf(strokes, TEST_BALL_TELLS.strokesLost * balls)
  return { share: guess.share * left, strokes: guess.strokes * left }
}

/** The part of a doubt that so much information leaves: as a normal prior of its variance would shrink. */
function leftOf(doubt: number, information: number): number {
  return 1 / Math.sqrt(1 + doubt ** 2 * information)
}
