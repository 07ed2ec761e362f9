import { SAME_FLIGHT_METRES } from './flight-settings.ts'
import type { Flights } from './flights.ts'

/** A club as far as its flight goes: its stock carry at reference conditions and its loft. */
export interface LoftedCarry {
  readonly carryMetres: number
  readonly loftDegrees: number
}

/**
 * The distance on the level in still reference air that needs the same club as a carry of `metres` along a heading
 * (radians clockwise from the y axis of the hole frame) today, metres: height, wind and air are in it, run is not. The
 * loft for a distance is read off `clubs`, in any order, at least one.
 */
export function playsAs(
  flights: Flights,
  clubs: readonly LoftedCarry[],
  metres: number,
  heading: number,
): number {
  if (!(metres > 0)) return 0
  const sorted = [...clubs].sort((a, b) => a.carryMetres - b.carryMetres)
  // Flights are flown for carries some metres apart; between them the share is joined, so that no metre more plays less.
  const shareAtNode = (node: number): number => {
    const carry = Math.max(1, node) * SAME_FLIGHT_METRES
    return flights.changeFor(loftForCarry(sorted, carry), carry, heading).carryShare
  }
  const shareFor = (carry: number): number => {
    const at = carry / SAME_FLIGHT_METRES
    const below = Math.floor(at)
    const share = shareAtNode(below)
    return share + (at - below) * (shareAtNode(below + 1) - share)
  }
  // The share hardly changes with the carry, so that each pass is some times nearer than the one before.
  let carry = metres
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const next = metres / Math.max(LEAST_SHARE, shareFor(carry))
    const moved = Math.abs(next - carry)
    carry = next
    if (moved < NEAR_METRES) break
  }
  return carry
}

const MOST_PASSES = 60
const NEAR_METRES = 1e-9
/** Against more wind or slope than leaves this share of a carry no club helps. Our assumption. */
const LEAST_SHARE = 0.25

/** Loft of the club for a carry, whole degrees: straight between neighbouring clubs, the last one's beyond. */
function loftForCarry(sorted: readonly LoftedCarry[], carryMetres: number): number {
  const above = sorted.findIndex((club) => club.carryMetres >= carryMetres)
  const long = above < 0 ? sorted.at(-1) : sorted[above]
  const short = above > 0 ? sorted[above - 1] : long
  if (!long || !short) return 0
  const gap = long.carryMetres - short.carryMetres
  const share = gap > 0 ? (carryMetres - short.carryMetres) / gap : 0
  return Math.round(short.loftDegrees + share * (long.loftDegrees - short.loftDegrees))
}
