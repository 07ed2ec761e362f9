import type { TeeSet } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import { playingHandicap, type TeeRating } from '#golf/rules/course-handicap.ts'

/**
 * The playing handicap from a set of tees with an allowance in per cent, whole strokes; `null` where the card does not rate
 * them. Sources: Rules of Handicapping 2024, 6.1 and 6.2.
 */
export function handicapOn(
  teeSets: readonly TeeSet[],
  teeName: string,
  player: Player,
  allowancePercent: number,
): number | null {
  const rating = ratingOn(teeSets, teeName, player)
  return rating === null ? null : playingHandicap(rating, allowancePercent)
}

/** A player and the set of tees, as handicaps are reckoned from; `null` where the card does not rate them. */
export function ratingOn(teeSets: readonly TeeSet[], teeName: string, player: Player): TeeRating | null {
  const set = teeSets.find(({ name }) => name.toLowerCase() === teeName.toLowerCase())
  if (!set || set.courseRating === null || set.slopeRating === null || set.par === null) return null
  return {
    indexTenths: Math.round(player.handicapIndex * 10),
    slopeRating: set.slopeRating,
    courseRatingTenths: Math.round(set.courseRating * 10),
    par: set.par,
  }
}
