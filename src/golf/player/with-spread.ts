import type { Player } from './player.ts'

/** The player with every club's good strikes spread so many times as wide, sideways and in length: 1 = as they are. */
export function withSpread(player: Player, factor: number): Player {
  return {
    ...player,
    clubs: player.clubs.map((club) => ({
      ...club,
      directionSdDegrees: club.directionSdDegrees * factor,
      carrySdShare: club.carrySdShare * factor,
    })),
  }
}
