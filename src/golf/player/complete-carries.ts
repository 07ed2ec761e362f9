import type { ClubKind } from './club-names.ts'
import type { ClubFile } from './player-file.ts'
import { ladderCarry, priorRun } from './prior.ts'

/**
 * A carry, metres, for every club of the bag. Known carries stay. A missing one follows the ladder, corrected by its
 * known neighbours: the correction is linear in log carry along the ladder between them and flat beyond the last.
 * A filled carry never passes a known longer or shorter club.
 */
export function completeCarries(
  kinds: readonly ClubKind[],
  written: ReadonlyMap<string, ClubFile>,
  driverCarryMetres: number,
): ReadonlyMap<string, number> {
  const known: Known[] = []
  for (const kind of kinds) {
    const carry = knownCarry(kind, written.get(kind.name))
    if (carry === null) continue
    const rung = Math.log(ladderCarry(kind, driverCarryMetres))
    known.push({ name: kind.name, carry, rung, correction: Math.log(carry) - rung })
  }
  known.sort((a, b) => a.rung - b.rung)
  const carries = new Map<string, number>()
  for (const kind of kinds) {
    const exact = known.find((one) => one.name === kind.name)
    carries.set(kind.name, exact?.carry ?? filledCarry(known, Math.log(ladderCarry(kind, driverCarryMetres))))
  }
  return carries
}

interface Known {
  readonly name: string
  readonly carry: number
  /** Log of the ladder's carry. */
  readonly rung: number
  /** Log of known over ladder. */
  readonly correction: number
}

function filledCarry(known: readonly Known[], rung: number): number {
  const shorter = known.findLast((one) => one.rung <= rung)
  const longer = known.find((one) => one.rung >= rung)
  if (shorter === undefined || longer === undefined) {
    return Math.exp(rung + ((shorter ?? longer)?.correction ?? 0))
  }
  const span = longer.rung - shorter.rung
  const share = span === 0 ? 0.5 : (rung - shorter.rung) / span
  return Math.exp(rung + shorter.correction + share * (longer.correction - shorter.correction))
}

/** Carry as typed, metres, or the typed total less the usual run; `null` when neither was typed. */
export function knownCarry(kind: ClubKind, club: ClubFile | undefined): number | null {
  if (club === undefined) return null
  if (club.carry_m !== undefined) return club.carry_m
  if (club.total_m === undefined) return null
  return club.total_m - priorRun(kind, club.total_m - priorRun(kind, club.total_m))
}
