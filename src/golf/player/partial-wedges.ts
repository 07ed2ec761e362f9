import { clubKind } from './club-names.ts'
import type { Club, Player } from './player.ts'
import {
  PARTIAL_SWING_LEAST_CARRY_METRES,
  PARTIAL_SWING_LEAST_LOFT_DEGREES,
  PARTIAL_SWINGS,
} from './settings.ts'

/** A partial swing of a wedge: `stock` is its pattern, named `sand-wedge half`. */
export interface PartialSwing {
  /** The club it is played with. */
  readonly club: string
  readonly shape: 'three-quarter' | 'half'
  readonly stock: Club
}

/**
 * The partial swings a player owns: three-quarter and half with every wedge, longest first. There is no "any
 * distance" club. Those that carry less than 40 m are left out, because the short game is valued there instead.
 */
export function partialSwings(player: Pick<Player, 'clubs'>): readonly PartialSwing[] {
  const swings: PartialSwing[] = []
  for (const club of player.clubs) {
    const kind = clubKind(club.name)
    if (kind === null || kind.loftDegrees < PARTIAL_SWING_LEAST_LOFT_DEGREES) continue
    for (const swing of PARTIAL_SWINGS) {
      const carryMetres = club.carryMetres * swing.carry
      if (carryMetres < PARTIAL_SWING_LEAST_CARRY_METRES) continue
      const stock: Club = {
        ...club,
        name: `${club.name} ${swing.shape}`,
        carryMetres,
        totalMetres: carryMetres + (club.totalMetres - club.carryMetres) * swing.run,
        directionSdDegrees: club.directionSdDegrees * swing.direction,
        carrySdShare: club.carrySdShare * swing.carrySd,
        mishitShare: club.mishitShare * swing.mishit,
        shots: 0,
        isGuess: true,
      }
      swings.push({ club: club.name, shape: swing.shape, stock })
    }
  }
  return swings.sort((a, b) => b.stock.carryMetres - a.stock.carryMetres)
}
