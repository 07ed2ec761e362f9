import { lieEffect } from '#golf/player/lie-effects.ts'
import { partialSwings } from '#golf/player/partial-wedges.ts'
import type { Club, Lie, Player } from '#golf/player/player.ts'

/** One stroke of the full game that a player owns: a club and how it is swung. */
export interface Shot {
  readonly club: string
  readonly shape: PlanShape
  readonly stock: Club
}

/** How a club is swung: the whole stock shot, or one of the partial swings the player owns. */
export type PlanShape = 'stock' | 'three-quarter' | 'half'

/** Every shot of a player's full game, longest first. */
export function shotsOf(player: Player): Shot[] {
  const stock = player.clubs.map((club): Shot => ({ club: club.name, shape: 'stock', stock: club }))
  const partial = partialSwings(player).map(
    (swing): Shot => ({ club: swing.club, shape: swing.shape, stock: swing.stock }),
  )
  return [...stock, ...partial].sort((a, b) => b.stock.totalMetres - a.stock.totalMetres)
}

/** Whether a player uses this shot from a lie. */
export function isAllowed(shot: Shot, lie: Lie, player: Player): boolean {
  return lieEffect(lie, shot.club, player).allowed
}
