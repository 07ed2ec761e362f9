/** How a stock shot curves: hook and draw bend to the left for a right-hander and to the right for a left-hander, fade and slice the other way. */
export const SHAPES = ['hook', 'draw', 'straight', 'fade', 'slice'] as const
export type Shape = (typeof SHAPES)[number]

/** Where a bad full shot ends, as the player sees it; `none`: no side more than the other. */
export const BIG_MISSES = ['left', 'right', 'short', 'none'] as const
export type BigMiss = (typeof BIG_MISSES)[number]

/**
 * What was said of a player and not measured, by its names in the file. It moves what is guessed, and all that comes of
 * it stays a guess: a typed or learned number replaces it. A carry that was said stands among the clubs.
 */
export interface Said {
  /** Clubs whose carry is as the player remembers it: surer than a guess, less sure than a measured one. */
  readonly carries?: readonly string[]
  /** Strokes of a usual round of 18 holes. */
  readonly usual_score?: number
  readonly shape?: Shape
  readonly big_miss?: BigMiss
  /** Share of full shots mishit, over the whole bag. */
  readonly mishit_share?: number
  /** Share of chips from 20 m of fairway that are holed in two. */
  readonly up_and_down_share?: number
  /** Metres from which every second putt is holed. */
  readonly half_holed_m?: number
}

/** What each said number may be. Our assumption: beyond it is a slip of the pen. */
export const SAID_RANGES: Readonly<
  Record<
    'usual_score' | 'mishit_share' | 'up_and_down_share' | 'half_holed_m',
    readonly [least: number, most: number]
  >
> = {
  usual_score: [55, 200],
  mishit_share: [0, 0.6],
  up_and_down_share: [0, 0.8],
  half_holed_m: [0.3, 4],
}

/** The same words of a player in a mirror: sides change, a draw stays one. */
export function mirrorSaid(said: Said): Said {
  const { big_miss } = said
  if (big_miss !== 'left' && big_miss !== 'right') return said
  return { ...said, big_miss: big_miss === 'left' ? 'right' : 'left' }
}
