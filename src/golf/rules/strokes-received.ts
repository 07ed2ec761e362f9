/**
 * Handicap strokes that a player receives on a hole: spread over 18 holes from stroke index 1 on. A plus player's
 * playing handicap is negative, and so is the answer on the holes where a stroke is given back, from index 18 down.
 * Source: Rules of Handicapping 2024, Appendix C and E; whole `playingHandicap`, `strokeIndex` 1 to 18.
 */
export function strokesReceived(playingHandicap: number, strokeIndex: number): number {
  if (playingHandicap >= 0) return Math.floor((playingHandicap + 18 - strokeIndex) / 18)
  // Not −0, which is another value to a test and a table.
  return 0 - Math.floor((strokeIndex - 1 - playingHandicap) / 18)
}
