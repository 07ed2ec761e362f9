import { normalCdf, normalQuantile } from './normal.ts'

/*
 * The split (two-piece) normal distribution with its mode at 0: half a normal curve with its own spread on
 * either side, joined without a step. A side holds probability in proportion to its spread. Formulas: Johnson,
 * Kotz and Balakrishnan, Continuous Univariate Distributions, vol. 1 (1994), section 13.10.
 */

/** Density at `x` (same unit as the spreads); at least one spread must be above 0. */
export function splitNormalPdf(x: number, leftSd: number, rightSd: number): number {
  const sd = x < 0 ? leftSd : rightSd
  if (sd === 0) return 0
  return (Math.sqrt(2 / Math.PI) / (leftSd + rightSd)) * Math.exp(-0.5 * (x / sd) ** 2)
}

/** Probability of a value of at most `x`; with both spreads 0 everything lies at 0. */
export function splitNormalCdf(x: number, leftSd: number, rightSd: number): number {
  const total = leftSd + rightSd
  if (x < 0) return leftSd === 0 ? 0 : ((2 * leftSd) / total) * normalCdf(x / leftSd)
  if (rightSd === 0) return 1
  return 1 - ((2 * rightSd) / total) * normalCdf(-x / rightSd)
}

/** The value below which probability `u` (0 to 1) lies; with both spreads 0 it is 0. */
export function splitNormalQuantile(u: number, leftSd: number, rightSd: number): number {
  const total = leftSd + rightSd
  if (total === 0) return 0
  if (u * total < leftSd) return leftSd * normalQuantile((u * total) / (2 * leftSd))
  if (rightSd === 0) return 0
  return -rightSd * normalQuantile(((1 - u) * total) / (2 * rightSd))
}
