import { Failure } from '#faults/failure.ts'
import type { Player } from '#golf/player/player.ts'

/** Refuses a club that is not in the bag before the hole is worked out. Throws MAR-PLAN-003. */
export function requireClub(player: Player, club: string | undefined): void {
  // The putter is in every bag, though not among the clubs of the file.
  if (club === undefined || club === 'putter' || player.clubs.some(({ name }) => name === club)) return
  const clubs = player.clubs.map(({ name }) => name).join(', ')
  throw new Failure('MAR-PLAN-003', `${player.name} has no ${club}. Clubs: ${clubs}.`, '--club')
}
