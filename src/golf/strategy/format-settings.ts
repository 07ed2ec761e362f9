import type { ObjectiveName } from './objective.ts'

/** Gaps between clubs under which it is too close to call, and close, in the unit of an objective. */
export interface FormatLimits {
  readonly tooClose: number
  readonly close: number
}

/** A chance or share of a hole is said in whole parts of a hundred, so less than one of them is no difference. Our assumption. */
const CHANCE_LIMITS: FormatLimits = { tooClose: 0.01, close: 0.03 }
/** A point is a stroke while points are scored: the limits of strokes. Our assumption. */
const POINT_LIMITS: FormatLimits = { tooClose: 0.03, close: 0.08 }

/** The limits of an objective. */
export function limitsOf(name: ObjectiveName): FormatLimits {
  return name === 'points' ? POINT_LIMITS : CHANCE_LIMITS
}

/** So many of the strokes that are roughly worth most are weighed exactly, at every place and level, as many as a solve for strokes weighs again. */
export const WEIGHED_EXACTLY = 3

/** Scores that differ in worth by no more than this count as the same from the longest down. Our assumption: a tenth of what can be said. */
export const SETTLED_WORTH = 1e-3
/** Strikes that stand for a club while a draw of the player plays its line. */
export const DRAW_QUADRATURE = { good: 192, mishit: 64 } as const
/** So many strokes from the one asked about on are planned for an objective; the few holes that take longer go on for the fewest strokes. Our assumption. */
export const PLANNED_STROKES = 7
/** A chance of a score over several holes this near to one is not looked into further. Our assumption. */
export const SURE_CHANCE = 0.999
