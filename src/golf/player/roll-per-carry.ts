import type { ClubKind } from './club-names.ts'
import { interpolateKnots } from './interpolate-knots.ts'
import { ROLL_PER_CARRY_BY_LOFT, SHORT_SHOT_RULES } from './short-game-settings.ts'

/** Roll per carry of a chip with a club of this loft before the professional has said theirs: the ladder, straight between its rungs. */
export function priorRollPerCarry(loftDegrees: number): number {
  return interpolateKnots(ROLL_PER_CARRY_BY_LOFT, loftDegrees)
}

/** Whether a kind of club is played for short shots: irons and wedges, and the most lofted hybrids. */
export function isChipped({ name, loftDegrees }: ClubKind): boolean {
  return loftDegrees >= SHORT_SHOT_RULES.chip.leastLoftDegrees && !name.endsWith('-wood') && name !== 'driver'
}
