/**
 * What counts on a hole in maximum score: never more than the Committee's maximum, which is the score too when the ball was
 * not holed out (`null`), without penalty. Source: Rules of Golf 2023, 21.2.
 */
export function maximumScore(strokes: number | null, maximum: number): number {
  return strokes === null ? maximum : Math.min(strokes, maximum)
}
