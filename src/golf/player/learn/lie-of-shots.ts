/** Lies whose own factors are learned. Out of trees and scrub a record does not tell a full swing from a low one. */
export const LEARNED_LIES = ['first-cut', 'rough', 'heavy', 'bunker'] as const
export type LearnedLieName = (typeof LEARNED_LIES)[number]

/** The factors of a lie that are learned, each as a logarithm over what was assumed, common to all clubs. */
export const LIE_NUMBERS = ['carry', 'direction', 'distance', 'mishit'] as const
export type LieNumber = (typeof LIE_NUMBERS)[number]

/** What a lie was assumed to do to a club's pattern: factors on carry, both spreads and the mishit share. */
export interface LieOfShots extends Readonly<Record<LieNumber, number>> {
  /** Place among {@link LEARNED_LIES}, −1 for the others. */
  readonly place: number
}

/** What a lie does to a club's pattern as it is drawn now. */
export interface LieEffects extends Readonly<Record<LieNumber, number>> {
  /** The part of the factor on carry that is not divided out of the shots yet: the player's own over the assumed. */
  readonly own: number
}
