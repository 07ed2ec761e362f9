import type { Player } from '../player.ts'
import { LIE_DOUBT, LIE_SHOT_TELLS } from './learn-settings.ts'
import { LEARNED_LIES, type LearnedLieName, LIE_NUMBERS } from './lie-of-shots.ts'

/**
 * How unsure the player's own factors of lies are before any shot, as a logarithm: {@link LIE_NUMBERS} of each of
 * {@link LEARNED_LIES}. Factors that were learned before are doubted less, the more shots they come from.
 */
export function lieDoubts(player: Pick<Player, 'clubs'>): Float64Array {
  return Float64Array.from(
    LEARNED_LIES.flatMap((lie) => {
      const shots = shotsBehind(player, lie)
      return LIE_NUMBERS.map((number) => {
        const doubt = number === 'carry' ? LIE_DOUBT.carry[lie] : LIE_DOUBT[number]
        return doubt / Math.sqrt(1 + doubt ** 2 * LIE_SHOT_TELLS[number] * shots)
      })
    }),
  )
}

/** Shots from a lie, with all clubs, that the factors in the player file were learned from. */
export function shotsBehind({ clubs }: Pick<Player, 'clubs'>, lie: LearnedLieName): number {
  return clubs.reduce((most, { lies }) => {
    const own = lies[lie]
    return Math.max(most, typeof own === 'object' ? (own.shots ?? 0) : 0)
  }, 0)
}
