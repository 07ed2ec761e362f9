/**
 * Points for a hole by its net score against par: 2 for par, one more or less for each stroke, never under 0.
 * `null` is a hole not finished: 0. Source: Rules of Golf 2023, 21.1b (the fixed score being par).
 */
export function stablefordPoints(netStrokes: number | null, par: number): number {
  return netStrokes === null ? 0 : Math.max(0, 2 + par - netStrokes)
}
