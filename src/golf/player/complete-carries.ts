import type { ClubKind } from './club-names.ts'
import { type KnownRung, neighbourCorrection } from './neighbour-correction.ts'
import type { ClubFile } from './player-file.ts'
import { ladderCarry, priorRun } from './prior.ts'

/**
 * A carry, metres, for every club of the bag. Known carries stay. A missing one follows the ladder, corrected by its
 * known neighbours: linear in log carry between them, so that it never passes them, and in proportion beyond the last.
 */
export function completeCarries(
  kinds: readonly ClubKind[],
  written: ReadonlyMap<string, ClubFile>,
  driverCarryMetres: number,
): ReadonlyMap<string, number> {
  const rungOf = (kind: ClubKind): number => Math.log(ladderCarry(kind, driverCarryMetres))
  const known = kinds.flatMap((kind): KnownRung[] => {
    const carry = knownCarry(kind, written.get(kind.name))
    return carry === null ? [] : [{ rung: rungOf(kind), correction: Math.log(carry) - rungOf(kind) }]
  })
  const carries = new Map<string, number>()
  for (const kind of kinds) {
    const rung = rungOf(kind)
    const filled = Math.exp(rung + neighbourCorrection(known, rung))
    carries.set(kind.name, knownCarry(kind, written.get(kind.name)) ?? filled)
  }
  return carries
}

/** Carry as typed, metres, or the typed total less the usual run; `null` when neither was typed. */
export function knownCarry(kind: ClubKind, club: ClubFile | undefined): number | null {
  if (club === undefined) return null
  if (club.carry_m !== undefined) return club.carry_m
  if (club.total_m === undefined) return null
  return club.total_m - priorRun(kind, club.total_m - priorRun(kind, club.total_m))
}
