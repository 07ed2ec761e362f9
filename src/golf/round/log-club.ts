import { clubKind } from '#golf/player/club-names.ts'
import { parseClubName } from '#golf/player/parse-club-name.ts'

/** The name of a club as a player file has it, or `putter`, from any spelling; `null` when the word is no club. */
export function logClub(text: string): string | null {
  const plain = text.trim().toLowerCase().replaceAll(/\s+/g, '-')
  if (clubKind(plain) !== null) return plain
  const spelled = parseClubName(text)
  if (spelled.kind === 'putter') return 'putter'
  return spelled.kind === 'club' ? spelled.name : null
}
