import { type ClubKind, clubKind } from './club-names.ts'
import { MOST_CLUBS } from './settings.ts'

/** Thirteen clubs a player of this driver carry is likely to own. Common practice: the shorter the hitter, the more woods and hybrids. */
const BAGS: readonly { readonly driverCarryAtLeast: number; readonly names: readonly string[] }[] = [
  {
    driverCarryAtLeast: 200,
    names: [
      'driver',
      '3-wood',
      '3-hybrid',
      '4-iron',
      '5-iron',
      '6-iron',
      '7-iron',
      '8-iron',
      '9-iron',
      'pitching-wedge',
      'gap-wedge',
      'sand-wedge',
      'lob-wedge',
    ],
  },
  {
    driverCarryAtLeast: 155,
    names: [
      'driver',
      '3-wood',
      '5-wood',
      '4-hybrid',
      '5-hybrid',
      '6-iron',
      '7-iron',
      '8-iron',
      '9-iron',
      'pitching-wedge',
      'gap-wedge',
      'sand-wedge',
      'lob-wedge',
    ],
  },
  {
    driverCarryAtLeast: 0,
    names: [
      'driver',
      '3-wood',
      '5-wood',
      '7-wood',
      '9-wood',
      '6-hybrid',
      '7-iron',
      '8-iron',
      '9-iron',
      'pitching-wedge',
      'gap-wedge',
      'sand-wedge',
      'lob-wedge',
    ],
  },
]

/** Two clubs nearer than this in loft do the same work (our assumption). */
const SAME_LOFT_DEGREES = 1.9

/**
 * The bag: the listed clubs, and from the likely bag those that no listed club stands in for, to at most thirteen.
 * Sorted longest first by the ladder.
 */
export function defaultBag(listed: readonly ClubKind[], driverCarryMetres: number): readonly ClubKind[] {
  const names = BAGS.find((bag) => driverCarryMetres >= bag.driverCarryAtLeast)?.names ?? []
  const bag = [...listed]
  for (const name of names) {
    const kind = clubKind(name)
    if (kind === null || bag.length >= MOST_CLUBS) continue
    const stoodIn = listed.some(
      (one) => one.name === name || Math.abs(one.loftDegrees - kind.loftDegrees) < SAME_LOFT_DEGREES,
    )
    if (!stoodIn) bag.push(kind)
  }
  return bag
}
