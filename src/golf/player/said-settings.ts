import type { LoftKnot } from './settings.ts'

/** Course Rating of a course that nothing is known of: a par of 72, rated as its par. Our assumption. */
export const USUAL_COURSE_RATING = 72
/** Slope Rating of a course of standard difficulty (published: Rules of Handicapping, definition of Slope Rating). */
export const STANDARD_SLOPE_RATING = 113
/**
 * Strokes by which a usual round is higher than rating plus index, because the index takes the best 8 of 20 (published:
 * Rules of Handicapping, rule 5.2): 0.93 standard deviations of a round. Rounds spread by about 3.2 strokes: common
 * practice, and what the drives' spreads of `settings.ts` are set by.
 */
export const USUAL_ABOVE_BEST_STROKES = 3

/**
 * How much of what a player says of mishits, short game and putting is taken over the level's own: half, since nobody
 * counted either. Our assumption.
 */
export const SAID_COUNTS = 0.5

/** Sideways curve of a driver as a share of its carry, to the side of the shape. Our assumption: about 5 and 10 yd in 100. */
export const CURVE_SHARE = { hook: 0.1, draw: 0.05, straight: 0, fade: 0.05, slice: 0.1 } as const
/** What the big miss adds to the driver's spread on its side, and takes from the other. Our assumption. */
export const BIG_MISS_SIDE_SHARE = 0.2
/** Both by loft, as parts of the driver's: more loft, less curve. Common practice as a shape, sizes are our assumption. */
export const SHAPE_BY_LOFT: readonly LoftKnot[] = [
  [10, 1],
  [19, 0.8],
  [34, 0.5],
  [46, 0.3],
  [60, 0.15],
]
/** A big miss that comes up short: factor on the carry of a mishit. Our assumption. */
export const SHORT_MISS_CARRY_FACTOR = 0.85

/** The least share of up-and-downs that is told from none. Our assumption. */
export const LEAST_UP_AND_DOWN_SHARE = 0.05

/**
 * Handicap index of a man by the metres from which half his putts are holed: `PUTTING_BY_HANDICAP` read the other way
 * round, on the putting table (published half-holed distances behind it: Broadie 2008). A test holds it to that.
 */
export const HANDICAP_BY_HALF_HOLED: readonly (readonly [metres: number, handicapIndex: number])[] = [
  [0.888, 54],
  [0.972, 45],
  [1.086, 36],
  [1.167, 31],
  [1.335, 25],
  [1.479, 20],
  [1.596, 16],
  [1.758, 10],
  [1.876, 6],
  [1.989, 3],
  [2.133, 0],
  [2.493, -5],
]

/**
 * Said carries of two clubs are asked about when they lie apart by less than `least` or more than `most` times what is
 * usual, and by more than `apart` beside it; logarithms. Our assumption: strong irons and short drivers stay inside.
 */
export const ASKED_CARRIES = { least: 0.5, most: 1.6, apart: 0.1 } as const
