import { clubKind } from './club-names.ts'
import type { Club, Player } from './player.ts'
import { CHIP_OUT_LOFT_DEGREES, LOW_SHOTS, PUNCH_MOST_LOFT_DEGREES } from './settings.ts'

/** A low shot of an iron: `stock` is its pattern, named `5-iron punch`. */
export interface LowShot {
  /** The club it is played with. */
  readonly club: string
  readonly shape: keyof typeof LOW_SHOTS
  readonly stock: Club
}

/** The low shots a player owns: a punch with every long or middle iron, longest first, then one chip-out. */
export function lowShots(player: Pick<Player, 'clubs'>): readonly LowShot[] {
  const irons = player.clubs.flatMap((club) => {
    const kind = clubKind(club.name)
    return kind?.name.endsWith('-iron') ? [{ club, loft: kind.loftDegrees }] : []
  })
  const punches = irons
    .filter(({ loft }) => loft <= PUNCH_MOST_LOFT_DEGREES)
    .map(({ club }) => lowShot(club, 'punch'))
    .sort((a, b) => b.stock.carryMetres - a.stock.carryMetres)
  const away = (loft: number): number => Math.abs(loft - CHIP_OUT_LOFT_DEGREES)
  const [nearest] = irons.toSorted((a, b) => away(a.loft) - away(b.loft))
  return nearest ? [...punches, lowShot(nearest.club, 'chip-out')] : punches
}

function lowShot(club: Club, shape: LowShot['shape']): LowShot {
  const swing = LOW_SHOTS[shape]
  const carryMetres = club.carryMetres * swing.carry
  const stock: Club = {
    ...club,
    name: `${club.name} ${shape}`,
    carryMetres,
    totalMetres: carryMetres * (1 + swing.run),
    directionSdDegrees: club.directionSdDegrees * swing.direction,
    carrySdShare: club.carrySdShare * swing.carrySd,
    mishitShare: club.mishitShare * swing.mishit,
    shots: 0,
    isGuess: true,
  }
  return { club: club.name, shape, stock }
}
