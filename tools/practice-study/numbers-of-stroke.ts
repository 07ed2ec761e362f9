import { normalQuantile } from '../../src/numbers/statistics/normal.ts'

/**
 * Random numbers that belong to one stroke, whoever plays it: the same hole played by two players meets the same luck, so
 * that what differs is the players (common random numbers).
 */
export interface NumbersOfStroke {
  /** Uniform between 0 and 1, both left out. */
  readonly uniform: (which: number) => number
  /** Standard normal. */
  readonly normal: (which: number) => number
}

/** The numbers of the stroke `count` (of its kind) of a hole: mixes the four whole numbers until every bit turns on every other. */
export function numbersOfStroke(seed: number, hole: number, count: number): NumbersOfStroke {
  const first = mixed(Math.imul(mixed(Math.imul(mixed(seed), 3) ^ hole), 5) ^ count)
  const uniform = (which: number): number => ((mixed(Math.imul(first, 7) ^ which) >>> 0) + 0.5) / 2 ** 32
  return { uniform, normal: (which) => normalQuantile(uniform(which)) }
}

/** One round of a whole number through multiplications and shifts, each of which can be undone. */
function mixed(number: number): number {
  let bits = (number + 0x9e3779b9) | 0
  bits = Math.imul(bits ^ (bits >>> 16), 0x21f0aaad)
  bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97)
  return bits ^ (bits >>> 15)
}
