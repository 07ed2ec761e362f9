import { type BagOfShots, bagOfShots } from './bag-of-shots.ts'
import { completePlayer } from './complete-player.ts'
import { type LearnedPlayer, learnPlayer } from './learn-player.ts'
import type { Player } from './player.ts'
import type { PlayerFile } from './player-file.ts'
import type { ShotRecord } from './shot-record.ts'

/** A player before anything is learned. */
export interface BeforeShots {
  /** As the file and the prior had it, with the clubs that the shots put into the bag. */
  readonly before: Player
  readonly bag: BagOfShots
}

/** What shots made of a player. */
export interface LearnedFromShots extends BeforeShots {
  readonly learned: LearnedPlayer
}

/** The player of a file with the bag that the shots show. */
export function beforeShots(file: PlayerFile, shots: readonly ShotRecord[]): BeforeShots {
  const bag = bagOfShots(file, shots)
  return { before: completePlayer(bag.file), bag }
}

/** Learns the player of a file from shots: the bag first, then the pattern of every club in it. */
export function learnFromShots(file: PlayerFile, shots: readonly ShotRecord[]): LearnedFromShots {
  return learnFromBag(beforeShots(file, shots))
}

/** Learns the pattern of every club, from the shots of the bag and from those of rounds, whose ids the player then knows. */
export function learnFromBag(
  { before, bag }: BeforeShots,
  rounds: { readonly shots: readonly ShotRecord[]; readonly keys: readonly string[] } = {
    shots: [],
    keys: [],
  },
): LearnedFromShots {
  const shots = [...bag.shots, ...rounds.shots]
  const learned = learnPlayer(before, shots)
  const learnedRounds = [...(before.learnedRounds ?? []), ...rounds.keys]
  return {
    before,
    bag: { ...bag, shots },
    learned:
      learnedRounds.length === 0 ? learned : { ...learned, player: { ...learned.player, learnedRounds } },
  }
}
