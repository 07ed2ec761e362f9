import { type BagOfShots, bagOfShots } from './bag-of-shots.ts'
import { completePlayer } from './complete-player.ts'
import { type LearnedPlayer, learnPlayer } from './learn-player.ts'
import type { Player } from './player.ts'
import type { PlayerFile } from './player-file.ts'
import type { ShotRecord } from './shot-record.ts'

/** What shots made of a player. */
export interface LearnedFromShots {
  /** As the file and the prior had it, with the clubs that the shots put into the bag. */
  readonly before: Player
  readonly learned: LearnedPlayer
  readonly bag: BagOfShots
}

/** Learns the player of a file from shots: the bag first, then the pattern of every club in it. */
export function learnFromShots(file: PlayerFile, shots: readonly ShotRecord[]): LearnedFromShots {
  const bag = bagOfShots(file, shots)
  const before = completePlayer(bag.file)
  return { before, bag, learned: learnPlayer(before, bag.shots) }
}
