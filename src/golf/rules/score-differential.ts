import { roundHalfUp } from './round-half-up.ts'

/** What is needed of one round, numbers with a decimal in tenths. */
export interface RatedScore {
  readonly adjustedGross: number
  readonly courseRatingTenths: number
  readonly slopeRating: number
  /** Playing-conditions adjustment. */
  readonly adjustmentTenths: number
}

/**
 * The score differential of 18 holes in tenths: 113 / slope × (adjusted gross − rating − adjustment), halves up.
 * Source: Rules of Handicapping 2024, Rule 5.1a.
 */
export function scoreDifferentialTenths(score: RatedScore): number {
  return roundHalfUp(overRatingTenths(score) * 113, score.slopeRating)
}

/**
 * The same from 9 holes and the player's index in tenths: their differential plus the expected one of the other nine,
 * 0.52 × index + 1.197. Approximate: the governing bodies publish no formula; this one is known second-hand only.
 * @public the first profile from a pupil's score record will use it.
 */
export function nineHoleDifferentialTenths(score: RatedScore, indexTenths: number): number {
  // Thousandths of a stroke, over the slope, so that nothing is rounded before the end.
  const played = overRatingTenths(score) * 113 * 100
  const expected = 52 * indexTenths + 1197
  return roundHalfUp(played + expected * score.slopeRating, 100 * score.slopeRating)
}

/**
 * Tenths to add to the latest 20 differentials after an exceptional score: −10 at 7.0 to 9.9 better than the index,
 * −20 from 10.0 on. Source: Rules of Handicapping 2024, Rule 5.9.
 * @public the first profile from a pupil's score record will use it.
 */
export function exceptionalScoreTenths(differentialTenths: number, indexTenths: number): number {
  const better = indexTenths - differentialTenths
  return better >= 100 ? -20 : better >= 70 ? -10 : 0
}

function overRatingTenths(score: RatedScore): number {
  return score.adjustedGross * 10 - score.courseRatingTenths - score.adjustmentTenths
}
