import type { OwnSentence } from './own-sentence.ts'
import type { Said } from './said.ts'

/** A player whose every number is filled: typed, learned, or guessed from the prior. SI, degrees. */
export interface Player {
  readonly name: string
  readonly hand: 'right' | 'left'
  /** Handicap index; plus players are negative. Filled by the prior when only a carry is known. */
  readonly handicapIndex: number
  readonly sex: 'male' | 'female' | 'unstated'
  /** Years, where stated: under 18 the prior's clubs are shorter, a known carry says more. */
  readonly age?: number
  /** What was said and not measured; the guesses follow it. */
  readonly said?: Said
  /** Sentences of cards that a person wrote for this player. */
  readonly sentences?: readonly OwnSentence[]
  /** Rounds that the patterns were learned from. */
  readonly learnedRounds?: readonly string[]
  /** Longest first; the putter is not among them. */
  readonly clubs: readonly Club[]
  readonly putting: Putting
  readonly shortGame: ShortGame
  /** Dotted paths of every number that was filled by the prior: `clubs.7-iron.direction_sd_deg`. */
  readonly guesses: ReadonlySet<string>
}

/**
 * A club in this player's hands: the pattern of its full stock shot at reference conditions
 * (level fairway, 15 °C, sea level, calm).
 */
export interface Club {
  readonly name: string
  /** Mean carry of good strikes, metres. */
  readonly carryMetres: number
  /** Mean total of good strikes on a level normal fairway, metres. */
  readonly totalMetres: number
  /** Spread of direction of good strikes, degrees, before the side shares. */
  readonly directionSdDegrees: number
  /** Multiply the direction spread on that side of the aim, as the player sees it. */
  readonly leftShare: number
  readonly rightShare: number
  /** Sideways curve as a share of carry, negative = to the left. */
  readonly curveShare: number
  /** Spread of carry of good strikes as a share of the carry. */
  readonly carrySdShare: number
  /** Share of full shots that are mishit. */
  readonly mishitShare: number
  /** Mean and spread of the carry of a mishit, as shares of the stock carry. */
  readonly mishitCarryShare: number
  readonly mishitCarrySdShare: number
  /** Shots the pattern was learned from. */
  readonly shots: number
  /** What the player says of it by lie: not used there, `{ heavy: false }`, or their own factors. */
  readonly lies: ClubLies
  /** True when the carry itself is a guess. */
  readonly isGuess: boolean
}

/** What the ball sits in. */
export const LIES = [
  'tee',
  'fairway',
  'first-cut',
  'rough',
  'heavy',
  'bunker',
  'fringe',
  'green',
  'trees',
  'scrub',
] as const
export type Lie = (typeof LIES)[number]

/** How a ball sits in its lie, where that makes a difference: `lie-names.ts` says which lie knows which. */
export type Sit = 'good' | 'down' | 'flier' | 'plugged' | 'bare'

/** A lie and, where the player has seen it, how the ball sits in it. */
export interface SeenLie {
  readonly lie: Lie
  readonly sit?: Sit
}

/** A player's own factors for one club from one lie, in place of ours: on carry, both spreads and the mishit share. */
export interface LieFactors {
  readonly carry?: number
  readonly direction?: number
  readonly distance?: number
  readonly mishit?: number
  /** Shots from this lie, with all clubs, that the factors were learned from. */
  readonly shots?: number
}

/** By name of the lie: whether the club is used from it, or the player's own factors, which say that it is. */
export type ClubLies = Readonly<Partial<Record<LieName, boolean | LieFactors>>>

/** A lie as a person names it: the lie, or how the ball sits in it. */
export type LieName = Lie | 'first-cut:flier' | 'rough:good' | 'rough:down' | 'bunker:plugged' | 'bare'

export interface Putting {
  readonly directionSdDegrees: number
  readonly distanceSdShare: number
  /** Putts of test days behind both; absent = none. */
  readonly shots?: number
}

/** Around the green, by level until it is measured. */
export interface ShortGame {
  /** Strokes lost to a tour player on a chip or pitch from 20 m of fairway; grows with the lie (see `settings.ts`). */
  readonly strokesLost: number
  /** Short shots of test days behind the strokes lost; absent = none. */
  readonly shots?: number
  /** Spreads of a chip from fairway and the share struck fat or thin; absent = as {@link strokesLost} lets expect. */
  readonly carrySdShare?: number
  readonly directionSdDegrees?: number
  readonly poorShare?: number
  /** Roll per carry of a chip by club, level green of 10 ft; a club that is absent follows the ladder by loft. */
  readonly rollPerCarry?: Readonly<Record<string, number>>
}
