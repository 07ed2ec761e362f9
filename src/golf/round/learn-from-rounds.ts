import { type BeforeShots, type LearnedFromShots, learnFromBag } from '#golf/player/learn-from-shots.ts'
import { learnLoggedNearGreen } from '#golf/player/learn-logged-near-green.ts'
import type { LearnedNearGreen } from '#golf/player/near-green-posterior.ts'
import type { RoundsRead } from './read-rounds.ts'

/** What tables of shots and rounds made of a player. */
export interface LearnedFromRounds extends LearnedFromShots {
  /** Putting and short game from the rounds; `null` where they say nothing of them. */
  readonly nearGreen: LearnedNearGreen | null
}

/** Learns a player from the shots of the bag and from rounds: the full game first, then putting and short game. */
export function learnFromRounds(unlearned: BeforeShots, rounds: RoundsRead): LearnedFromRounds {
  const full = learnFromBag(unlearned, rounds)
  if (rounds.putts.length + rounds.strokes.length === 0) return { ...full, nearGreen: null }
  const nearGreen = learnLoggedNearGreen(full.learned.player, rounds)
  return { ...full, learned: { ...full.learned, player: nearGreen.player }, nearGreen }
}
