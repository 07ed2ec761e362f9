/** A kind of club: its usual loft, and its carry as a share of the same player's driver carry. */
export interface ClubKind {
  readonly name: string
  readonly loftDegrees: number
  readonly carryShare: number
}

/**
 * The clubs Marram knows by name, longest first. Lofts and carry shares are common practice (no source free of
 * makers' names exists), the 3-wood's share held against the second shots of the Course Rating players (published: 220
 * after 250, 190 after 210, 170 after 200 yd); shares are for a driver carry of about 200 m, see `ladderCarry`.
 */
export const CLUB_KINDS: readonly ClubKind[] = [
  { name: 'driver', loftDegrees: 10.5, carryShare: 1 },
  { name: '2-wood', loftDegrees: 13, carryShare: 0.945 },
  { name: '3-wood', loftDegrees: 15, carryShare: 0.895 },
  { name: '4-wood', loftDegrees: 17, carryShare: 0.872 },
  { name: '1-iron', loftDegrees: 16, carryShare: 0.858 },
  { name: '5-wood', loftDegrees: 18.5, carryShare: 0.85 },
  { name: '2-hybrid', loftDegrees: 17.5, carryShare: 0.845 },
  { name: '2-iron', loftDegrees: 18.5, carryShare: 0.835 },
  { name: '6-wood', loftDegrees: 20, carryShare: 0.83 },
  { name: '3-hybrid', loftDegrees: 19.5, carryShare: 0.822 },
  { name: '7-wood', loftDegrees: 21.5, carryShare: 0.808 },
  { name: '3-iron', loftDegrees: 21, carryShare: 0.804 },
  { name: '4-hybrid', loftDegrees: 22, carryShare: 0.787 },
  { name: '8-wood', loftDegrees: 23.5, carryShare: 0.782 },
  { name: '4-iron', loftDegrees: 24, carryShare: 0.767 },
  { name: '9-wood', loftDegrees: 25, carryShare: 0.76 },
  { name: '5-hybrid', loftDegrees: 25, carryShare: 0.752 },
  { name: '5-iron', loftDegrees: 27, carryShare: 0.732 },
  { name: '6-hybrid', loftDegrees: 28, carryShare: 0.714 },
  { name: '6-iron', loftDegrees: 30, carryShare: 0.694 },
  { name: '7-iron', loftDegrees: 34, carryShare: 0.651 },
  { name: '8-iron', loftDegrees: 38, carryShare: 0.606 },
  { name: '9-iron', loftDegrees: 42, carryShare: 0.56 },
  { name: 'pitching-wedge', loftDegrees: 46, carryShare: 0.51 },
  { name: 'gap-wedge', loftDegrees: 51, carryShare: 0.452 },
  { name: 'sand-wedge', loftDegrees: 56, carryShare: 0.39 },
  { name: 'lob-wedge', loftDegrees: 60, carryShare: 0.335 },
]

const WEDGE_BY_LOFT = /^(4[4-9]|5\d|6[0-4])-wedge$/

/** The kind a name stands for, wedges by loft (`52-wedge`, 44° to 64°) among them; `null` when unknown. */
export function clubKind(name: string): ClubKind | null {
  const known = CLUB_KINDS.find((kind) => kind.name === name)
  if (known !== undefined) return known
  const match = WEDGE_BY_LOFT.exec(name)
  if (match === null) return null
  const loftDegrees = Number(match[1])
  return { name, loftDegrees, carryShare: wedgeShare(loftDegrees) }
}

/** Straight line through the named wedges' shares, carried on past both ends. */
function wedgeShare(loftDegrees: number): number {
  const wedges = CLUB_KINDS.filter((kind) => kind.loftDegrees >= 46)
  let best = 0
  for (let index = 0; index + 1 < wedges.length; index += 1) {
    const low = wedges[index]
    const high = wedges[index + 1]
    if (low === undefined || high === undefined) continue
    const slope = (high.carryShare - low.carryShare) / (high.loftDegrees - low.loftDegrees)
    best = low.carryShare + slope * (loftDegrees - low.loftDegrees)
    if (loftDegrees <= high.loftDegrees) break
  }
  return best
}
