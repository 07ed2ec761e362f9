import { SAME_WEDGE_DEGREES, SHOTS_THAT_SHOW_A_CLUB } from './bag-settings.ts'
import { clubKind } from './club-names.ts'
import type { PlayerFile } from './player-file.ts'
import { LISTED_CLUBS_THAT_MAKE_A_BAG, MOST_CLUBS, PARTIAL_SWING_LEAST_LOFT_DEGREES } from './settings.ts'
import type { ShotRecord } from './shot-record.ts'

/** A player whose bag holds what was hit, and the shots by the names in that bag. */
export interface BagOfShots {
  readonly file: PlayerFile
  readonly shots: readonly ShotRecord[]
  /** Clubs that were hit and not listed, and now are. */
  readonly added: readonly string[]
}

/**
 * Brings shots and bag together. A wedge goes by the name it has in the bag (`gap-wedge` is the `52-wedge` when no other
 * is so near in loft). While the bag is a guess, clubs with enough shots are listed in it, the most used first; a bag
 * that the player listed stays as it is.
 */
export function bagOfShots(file: PlayerFile, shots: readonly ShotRecord[]): BagOfShots {
  const listed = file.clubs.map(({ name }) => name)
  const names = new Map(
    [...new Set(shots.map(({ club }) => club))].map((club) => [club, nameInBag(club, listed)]),
  )
  const named = shots.map((shot) => {
    const club = names.get(shot.club) ?? shot.club
    return club === shot.club ? shot : { ...shot, club }
  })
  const isGuessed =
    file.bag === 'fill' || (file.bag === undefined && listed.length < LISTED_CLUBS_THAT_MAKE_A_BAG)
  if (!isGuessed) return { file, shots: named, added: [] }
  const counts = new Map<string, number>()
  for (const { club } of named) counts.set(club, (counts.get(club) ?? 0) + 1)
  const added = [...counts]
    .filter(([club, count]) => count >= SHOTS_THAT_SHOW_A_CLUB && !listed.includes(club))
    .sort((a, b) => b[1] - a[1])
    .map(([club]) => club)
    .slice(0, Math.max(0, MOST_CLUBS - listed.length))
  const clubs = [...file.clubs, ...added.map((name) => ({ name, shots: 0, lies: {} }))]
  // With eight clubs the file would be taken for the whole bag.
  return { file: { ...file, bag: 'fill', clubs }, shots: named, added }
}

function nameInBag(name: string, listed: readonly string[]): string {
  const loft = clubKind(name)?.loftDegrees ?? 0
  if (listed.includes(name) || loft < PARTIAL_SWING_LEAST_LOFT_DEGREES) return name
  const near = listed.filter(
    (one) => Math.abs((clubKind(one)?.loftDegrees ?? 0) - loft) <= SAME_WEDGE_DEGREES,
  )
  return near.length === 1 ? (near[0] ?? name) : name
}
