import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { fetchDocument } from './fetch-document.ts'

/** A player of the store with every number filled. Throws a Failure when the file cannot be read. */
export async function loadPlayer(id: string): Promise<Player> {
  return completePlayer(parsePlayer(await fetchDocument('players', id), `players/${id}`))
}
