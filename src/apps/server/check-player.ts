import { Failure } from '#faults/failure.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { CheckedDocument } from './document-check.ts'

/**
 * Reads a document as a player file. Throws the Failure of the reader, and MAR-PLAYER-015 when it holds more of a minor's
 * name than the first.
 */
export function checkPlayer(text: string, where: string): CheckedDocument {
  const { name } = parsePlayer(text, where)
  const written = (JSON.parse(text) as { readonly name: string }).name.trim()
  if (written !== name)
    throw new Failure(
      'MAR-PLAYER-015',
      `A player under 18 is kept by first name only. Write "${name}" and send it again.`,
      `${where}: name`,
    )
  return { name, faults: [] }
}
