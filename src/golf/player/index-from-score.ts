import { STANDARD_SLOPE_RATING, USUAL_ABOVE_BEST_STROKES, USUAL_COURSE_RATING } from './said-settings.ts'
import { HANDICAP_RANGE } from './settings.ts'

/**
 * Score Differential of a round: 113 / slope × (adjusted gross score − Course Rating), to a tenth (Rules of Handicapping,
 * rule 5.1a, without a playing conditions calculation).
 */
export function scoreDifferential(grossScore: number, courseRating: number, slopeRating: number): number {
  return Math.round((STANDARD_SLOPE_RATING / slopeRating) * (grossScore - courseRating) * 10) / 10
}

/**
 * Handicap index that a usual score of 18 holes speaks for: its differential on a course rated as its par of 72 and of
 * standard slope, less what the best rounds are better than a usual one. Held within what the prior speaks about.
 */
export function indexFromScore(usualScore: number): number {
  const [least, most] = HANDICAP_RANGE
  const usual = scoreDifferential(usualScore, USUAL_COURSE_RATING, STANDARD_SLOPE_RATING)
  return Math.min(most, Math.max(least, usual - USUAL_ABOVE_BEST_STROKES))
}
