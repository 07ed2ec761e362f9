import type { Lie } from './player.ts'

/** One place of a test day, and how many balls are played from it. */
export interface Station {
  /** As it is typed and printed: `putt-2m`, `chip-fairway-15m`. */
  readonly name: string
  readonly kind: 'putt' | 'short'
  readonly lie: Lie
  readonly metres: number
  readonly balls: number
  /** Whether it is measured where missed balls stop; from near the hole it says nothing new. */
  readonly hasLeaves: boolean
}

function putt(metres: number, balls: number, hasLeaves: boolean): Station {
  return { name: `putt-${metres}m`, kind: 'putt', lie: 'green', metres, balls, hasLeaves }
}

function short(name: string, lie: Lie, metres: number, balls: number): Station {
  return { name: `${name}-${metres}m`, kind: 'short', lie, metres, balls, hasLeaves: true }
}

/**
 * The stations of the test, the same every time so that one quarter can be held against the next: 42 putts and 28 short
 * shots in about 40 minutes. Putts of which half or so are holed tell most about direction, long ones about pace. Our
 * choice; tests of ten putts from each distance are common practice.
 */
export const STATIONS: readonly Station[] = [
  putt(1, 10, false),
  putt(2, 10, false),
  putt(4, 10, false),
  putt(8, 6, true),
  putt(14, 6, true),
  short('chip-fairway', 'fairway', 15, 8),
  short('chip-rough', 'rough', 15, 8),
  short('pitch-fairway', 'fairway', 30, 6),
  short('sand', 'bunker', 12, 6),
]
