/** The whole number nearest to a quotient of two whole numbers, halves upwards; exact, where dividing first would lose 4.35. */
export function roundHalfUp(numerator: number, denominator: number): number {
  return Math.floor((2 * numerator + denominator) / (2 * denominator))
}
