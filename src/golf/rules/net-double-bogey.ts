/**
 * The most strokes that count on a hole for handicapping: par + 2 + strokes received (fewer where strokes are given
 * back); par + 5 before there is an index (`strokesReceived` is `null`). Source: Rules of Handicapping 2024, Rule 3.1.
 */
export function netDoubleBogey(par: number, strokesReceived: number | null): number {
  return strokesReceived === null ? par + 5 : par + 2 + strokesReceived
}
