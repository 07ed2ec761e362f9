import { roundHalfUp } from './round-half-up.ts'

/** A player and a set of tees, numbers with a decimal in tenths. */
export interface TeeRating {
  readonly indexTenths: number
  readonly slopeRating: number
  readonly courseRatingTenths: number
  readonly par: number
}

/**
 * The course handicap, not rounded: index × slope / 113 + (rating − par).
 * Source: Rules of Handicapping 2024, Rule 6.1a.
 */
export function courseHandicap(rating: TeeRating): number {
  return thousandThirtieths(rating) / 1130
}

/**
 * The playing handicap in whole strokes: the course handicap times an allowance in per cent, rounded once, halves up.
 * Source: Rules of Handicapping 2024, Rule 6.2.
 */
export function playingHandicap(rating: TeeRating, allowancePercent: number): number {
  return roundHalfUp(thousandThirtieths(rating) * allowancePercent, 113_000)
}

/**
 * The index for nine holes in tenths: half of it, halves up. Source: Rules of Handicapping 2024, Rule 6.1b.
 */
export function nineHoleIndexTenths(indexTenths: number): number {
  return roundHalfUp(indexTenths, 2)
}

/** The course handicap in parts of 1/1130, a whole number. */
function thousandThirtieths({ indexTenths, slopeRating, courseRatingTenths, par }: TeeRating): number {
  return indexTenths * slopeRating + (courseRatingTenths - par * 10) * 113
}
