import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { readText } from './read-file.ts'

/** A player from a file, every missing number filled by the prior and listed as a guess. Throws what is wrong with the file. */
export function loadPlayer(path: string): Player {
  return completePlayer(parsePlayer(readText(path), path))
}
