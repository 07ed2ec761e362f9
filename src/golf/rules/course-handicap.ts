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
  return sidePlayingHandicap([rating], [allowancePercent])
}

/**
 * The one playing handicap of partners who play one ball: what each gives of the course handicap in per cent, lowest handicap
 * first, added up and rounded once, halves up. Throws a RangeError when there are not as many parts as partners. Source: Rules of
 * Handicapping 2024, Rule 6.2 and Appendix C.
 */
export function sidePlayingHandicap(
  ratings: readonly TeeRating[],
  allowancesPercent: readonly number[],
): number {
  if (ratings.length !== allowancesPercent.length)
    throw new RangeError(`${allowancesPercent.length} allowances for ${ratings.length} partners`)
  const parts = ratings.map(thousandThirtieths).sort((a, b) => a - b)
  return roundHalfUp(
    parts.reduce((sum, part, place) => sum + part * (allowancesPercent[place] as number), 0),
    113_000,
  )
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
