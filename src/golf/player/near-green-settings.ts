import type { HandicapKnot } from './settings.ts'

/** Green speed of the putting tables, feet on the ramp. Our assumption: between club and tour greens. */
export const PUTTING_GREEN_SPEED_FEET = 10
/** Paces a player may choose from: how far past the hole the putt would stop, metres. The cheapest is taken at every distance. */
export const PUTT_PAST_METRES: readonly number[] = [0.05, 0.15, 0.25, 0.35, 0.5, 0.7]

/**
 * What the stroke does not explain, added in quadrature to the player's own spreads: reading the green, degrees, and
 * pace by slope and grass, share of the length. Fitted so that the published tour stroke (1.0°, 6.5 % of the length:
 * Bansal & Broadie 2008) gives the published tour table of expected putts; largest miss 0.01 from 2 to 60 ft.
 */
export const READING_DIRECTION_SD_DEGREES = 0.8
export const READING_DISTANCE_SD_SHARE = 0.0733
/** Misreading of the break, as a share of the break itself (standard deviation). Our assumption. */
export const READING_BREAK_SHARE = 0.1
/**
 * Aims that a player may choose from on a slope beside the line of the ball as meant: shares of the way to the line of one
 * a standard deviation slower, which breaks more. The cheapest is taken. Our assumption.
 */
export const PUTT_AIMS_FOR_SLOWER: readonly number[] = [-0.2, 0.2, 0.4]
/** Rings about the hole, metres, and places around each, from which putting on a sloping green is worked out. Measured in `docs/method.md`. */
export const GREEN_RINGS_METRES: readonly number[] = [
  0.3, 0.6, 0.9, 1.3, 1.8, 2.5, 3.5, 5, 7, 10, 14, 19.5, 27, 38, 53, 75,
]
export const GREEN_ANGLES = 24
/** A slope adds at most so many strokes to a putt. Our assumption: by then a player putts for somewhere else than the hole. */
export const MOST_SLOPE_STROKES = 2

/**
 * Spread of the stroke by handicap index: [index, direction in degrees, distance as a share]. Published: tour 1.0°
 * and 6.5 %, 8.5 % for a golfer averaging 90 (Bansal & Broadie 2008). The directions are fitted to the published
 * distances from which half are holed and two putts are the average (Broadie 2008: 5.8/25, 5.1/19, 3.8/12 ft). Past 31:
 * our assumption, a lesser slope.
 */
export const PUTTING_BY_HANDICAP: readonly (readonly [number, number, number])[] = [
  [-5, 1, 0.065],
  [6, 1.6, 0.067],
  [16, 1.95, 0.085],
  [31, 2.7, 0.119],
  [54, 3.6, 0.16],
]

/**
 * Strokes lost to a tour player on one short shot from 20 m of fairway. Published anchors: a round's losses to
 * scratch (4.0, 15.5 and 31.0 for average scores 70–83, 84–97, 98–120; putting 0.8, 2.3, 5.1; the long game two
 * thirds) leave about 0.3 a short shot at index 16; line for a golfer averaging 90 (2.79 + 0.0066 yd) lies 0.49
 * over the tour's fairway column at 60 yd.
 */
export const STROKES_LOST_BY_HANDICAP: readonly HandicapKnot[] = [
  [-5, 0],
  [0, 0.1],
  [16, 0.4],
  [31, 0.75],
  [54, 1.25],
]

/** A knot of a line over distance: [yards, value]. */
export type YardKnot = readonly [yards: number, value: number]

/**
 * Expected strokes to hole out for a tour player, by yards from the hole. Published: Broadie 2012, Table 9 (10 to
 * 80 yd). At 0 and 5 yd, where the table is silent: our assumption, between its first row and the putting table.
 */
export const TOUR_FROM_FAIRWAY: readonly YardKnot[] = [
  [0, 1.45],
  [5, 1.98],
  [10, 2.18],
  [20, 2.4],
  [30, 2.52],
  [40, 2.6],
  [50, 2.66],
  [60, 2.7],
  [70, 2.72],
  [80, 2.75],
]
export const TOUR_FROM_ROUGH: readonly YardKnot[] = [
  [0, 1.6],
  [5, 2.13],
  [10, 2.34],
  [20, 2.59],
  [30, 2.7],
  [40, 2.78],
  [50, 2.87],
  [60, 2.91],
  [70, 2.93],
  [80, 2.96],
]
export const TOUR_FROM_SAND: readonly YardKnot[] = [
  [0, 2.3],
  [5, 2.36],
  [10, 2.43],
  [20, 2.53],
  [30, 2.66],
  [40, 2.82],
  [50, 2.92],
  [60, 3.15],
  [70, 3.21],
  [80, 3.24],
]
/** Recovery column of the same table: out of trees or scrub, where the next shot is obstructed. */
export const TOUR_FROM_TROUBLE: readonly YardKnot[] = [
  [0, 3.4],
  [10, 3.45],
  [20, 3.51],
  [30, 3.57],
  [40, 3.71],
  [50, 3.79],
  [60, 3.83],
  [70, 3.84],
]

/** Lies between the published columns, as a share of the step from one column to the next. Our assumption, ordered. */
export const FIRST_CUT_BETWEEN_FAIRWAY_AND_ROUGH = 0.3
export const HEAVY_BEYOND_ROUGH = 0.8
export const TREES_BETWEEN_HEAVY_AND_TROUBLE = 0.5

/** Strokes lost grow with this power of distance over 20 m. Fitted: loss at 60 yd over loss at 20 m, see `STROKES_LOST_BY_HANDICAP`. */
export const STROKES_LOST_DISTANCE_POWER = 0.2
/**
 * Factor on the strokes lost by lie. Sand fitted to published sand saves (50, 26, 17 and 7 % for tour and average
 * scores 70–83, 84–97, 98–120); the grass lies are our assumption, ordered.
 */
export const STROKES_LOST_BY_LIE: {
  readonly fairway: number
  readonly 'first-cut': number
  readonly rough: number
  readonly heavy: number
  readonly bunker: number
  readonly trees: number
  readonly scrub: number
} = { fairway: 1, 'first-cut': 1.05, rough: 1.2, heavy: 1.5, bunker: 1.6, trees: 1.5, scrub: 1.7 }

/** A putt from the fringe: factors on both spreads of the putt on the green. Our assumption. */
export const FRINGE_PUTT_DIRECTION_FACTOR = 1.15
export const FRINGE_PUTT_DISTANCE_FACTOR = 1.3

/**
 * Chance of holing out in at most two from a mean of `m` strokes: exp(−steepness · (m − sure)). Fitted to published
 * pairs of mean and up-and-down: tour from 15 and 25 yd (69, 51, 54, 35, 42 %) and sand saves 26, 17, 7 %.
 */
export const UP_AND_DOWN_STEEPNESS = 1.72
export const UP_AND_DOWN_SURE_MEAN = 2.08
/** Chance that a tour player holes a short shot, times yards. Our assumption, about 1 in 12 from 10 yd and 1 in 40 from 30. */
export const HOLE_OUT_YARDS = 0.8
/** Of all up-and-downs at most this share is holed at once, while the mean is over two. Our assumption. */
export const HOLE_OUT_MOST_OF_UP_AND_DOWNS = 0.4

/**
 * What one putt of a test day tells of a putting spread's logarithm, and one short shot of the strokes lost: 1 /
 * variance. Measured on simulated test days of golfers of index 0, 15 and 30 (docs/method.md; `near-green-doubt.test.ts`).
 */
export const TEST_BALL_TELLS = { puttSpread: 0.24, strokesLost: 6.5 } as const

/** How much players of one level differ in each putting spread: sd of its logarithm. Wider than a plan doubts a guess, since a test asks about one player. Our assumption. */
export const PUTTING_PRIOR_SD = 0.25
/** How much players of one level differ in strokes lost around the green: sd as a share of the strokes lost, and in strokes. Our assumption. */
export const SHORT_PRIOR_SD = { share: 0.35, strokes: 0.08 } as const

/** How far a number near the green may be from what is stated. */
interface NearGreenDoubt {
  readonly spread: number
  readonly share: number
  readonly strokes: number
  /** Of the carry-to-roll ladder as a whole, and of each rung beside it. */
  readonly roll: number
  readonly rung: number
}

/**
 * Doubt about putting spreads, strokes lost and the roll of a chip (logarithm; strokes lost also in strokes). Our assumption;
 * published ladders differ by a factor of two at most, which is about two such spreads either way.
 */
export const NEAR_GREEN_DOUBT: { readonly guess: NearGreenDoubt; readonly typed: NearGreenDoubt } = {
  guess: { spread: 0.1, share: 0.2, strokes: 0.03, roll: 0.15, rung: 0.06 },
  typed: { spread: 0.04, share: 0.08, strokes: 0.01, roll: 0.05, rung: 0.03 },
}
