import { writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** A player of whom only name and index are known, in a file of the folder; indices spread evenly from 0 to 36. Returns the file. */
export function inventedPlayer(folder: string, index: number, players: number): string {
  const path = join(folder, `${index}.player.json`)
  const name = `Player ${index + 1}`
  const handicapIndex = Math.round((360 * index) / players) / 10
  writeFileSync(
    path,
    JSON.stringify({ schema: 'player/1', name, hand: index % 8 === 0 ? 'left' : 'right', handicapIndex }),
  )
  return path
}
