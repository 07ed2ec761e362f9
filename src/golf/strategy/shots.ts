import { clubKind } from '#golf/player/club-names.ts'
import { lieEffect } from '#golf/player/lie-effects.ts'
import { lowShots } from '#golf/player/low-shots.ts'
import { partialSwings } from '#golf/player/partial-wedges.ts'
import type { Club, Lie, Player, Sit } from '#golf/player/player.ts'

/** One stroke of the full game that a player owns: a club and how it is swung. */
export interface Shot {
  readonly club: string
  readonly shape: ShotShape
  readonly loftDegrees: number
  readonly stock: Club
}

/** How a club is swung: the whole stock shot, one of the partial swings the player owns, or one of the low shots. */
export type ShotShape = (typeof SHOT_SHAPES)[number]
const SHOT_SHAPES = ['stock', 'three-quarter', 'half', 'punch', 'chip-out'] as const

/** Whether the shape of an option is one of the full game's. */
export function isShotShape(shape: string): shape is ShotShape {
  return (SHOT_SHAPES as readonly string[]).includes(shape)
}

/** Every shot of a player's full game: whole swings longest first, then partial ones, then low ones. */
export function shotsOf(player: Player): Shot[] {
  return [
    ...player.clubs.map(
      (club): Shot => ({ club: club.name, shape: 'stock', loftDegrees: loftOf(club.name), stock: club }),
    ),
    ...partialSwings(player).map(
      ({ club, shape, stock }): Shot => ({ club, shape, loftDegrees: loftOf(club), stock }),
    ),
    ...lowShots(player).map(
      ({ club, shape, stock }): Shot => ({ club, shape, loftDegrees: loftOf(club), stock }),
    ),
  ]
}

/** Whether a shot is kept low: a way out from among trees, played only where trees are in the way. */
export function isLow(shot: Pick<Shot, 'shape'>): boolean {
  return shot.shape === 'punch' || shot.shape === 'chip-out'
}

/** Whether a shot is a partial swing, played only on approaches. */
export function isPartial(shot: Pick<Shot, 'shape'>): boolean {
  return shot.shape === 'three-quarter' || shot.shape === 'half'
}

/** Loft of a club by its name, degrees; a middle iron's where the name says nothing. */
function loftOf(club: string): number {
  return clubKind(club)?.loftDegrees ?? 34
}

/**
 * The same shots in the hands of another draw of the same player, in the same order: every number of a shot moves as
 * its club's does.
 */
export function shotsRedrawn(shots: readonly Shot[], player: Player, drawn: Player): Shot[] {
  const clubs = new Map(
    player.clubs.map((club, index) => [club.name, { was: club, is: drawn.clubs[index] ?? club }]),
  )
  return shots.map((shot) => {
    const pair = clubs.get(shot.club)
    if (!pair) return shot
    const stock = { ...shot.stock }
    for (const number of REDRAWN)
      stock[number] =
        pair.was[number] === 0 ? pair.is[number] : (shot.stock[number] * pair.is[number]) / pair.was[number]
    return { ...shot, stock: { ...stock, curveShare: pair.is.curveShare } }
  })
}

const REDRAWN = [
  'carryMetres',
  'totalMetres',
  'directionSdDegrees',
  'leftShare',
  'rightShare',
  'carrySdShare',
  'mishitShare',
  'mishitCarryShare',
  'mishitCarrySdShare',
] as const satisfies readonly (keyof Club)[]

/** Whether a player uses this shot from a lie, seen or not. */
export function isAllowed(shot: Shot, lie: Lie, player: Player, sit?: Sit): boolean {
  return lieEffect(lie, shot.stock.name, player, { sit }).allowed
}
