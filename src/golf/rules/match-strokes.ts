/**
 * Strokes each player receives in a match: the difference to the lowest playing handicap, which goes down to zero.
 * Source: Rules of Handicapping 2024, Appendix C.
 */
export function matchStrokes(playingHandicaps: readonly number[]): number[] {
  const lowest = Math.min(...playingHandicaps)
  return playingHandicaps.map((handicap) => handicap - lowest)
}
