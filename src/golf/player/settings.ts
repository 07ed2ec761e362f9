/**
 * Tuning numbers of the player room (those of lies stand in `lie-settings.ts`, those near the green in
 * `near-green-settings.ts`): unit, meaning, and where each comes from. "Published" names the source;
 * "common practice" is what the trade says without a source; "our assumption" is ours alone.
 */

/** A knot of a line over handicap index: [handicap index, value]. */
export type HandicapKnot = readonly [handicapIndex: number, value: number]

/** A knot of a line over loft: [degrees of loft, value]. */
export type LoftKnot = readonly [loftDegrees: number, value: number]

/** A knot of a line over age: [years, value]. */
export type AgeKnot = readonly [years: number, value: number]

/** Range of handicap index the prior speaks about: −5 stands for a tour player (our assumption), 54 is the World Handicap System's highest. */
export const HANDICAP_RANGE: readonly [number, number] = [-5, 54]

/**
 * Mean total of a man's drive, yards, mishits included. Published: distance report of the governing bodies for
 * 2018 (≤5 240, 6–12 220, 13–20 204, ≥21 187; each band set at its own middle), Course Rating scratch player
 * 250 at 0, main tours of 2019 about 294 at −5. Past 26: our assumption, the same slope. Between the knots all lines over index are smooth.
 */
export const DRIVE_TOTAL_YARDS_MEN: readonly HandicapKnot[] = [
  [-5, 290],
  [0, 250],
  [2.5, 240],
  [9, 220],
  [16.5, 204],
  [26, 187],
  [54, 145],
]

/** The same for a woman. Published: the same report (196, 178, 153, 138, 118), Course Rating scratch player 210 at 0; −5 from memory. */
export const DRIVE_TOTAL_YARDS_WOMEN: readonly HandicapKnot[] = [
  [-5, 250],
  [0, 210],
  [2.5, 196],
  [9, 178],
  [16.5, 153],
  [24.5, 138],
  [36, 118],
  [54, 96],
]

/**
 * Drive of a junior as a share of the adult's of the same index and sex, by age in years; from 18 on 1. Our assumption,
 * after growth in height and strength: girls are grown two years before boys.
 */
export const JUNIOR_LENGTH_BOYS: readonly AgeKnot[] = [
  [5, 0.33],
  [8, 0.5],
  [10, 0.6],
  [12, 0.71],
  [14, 0.85],
  [16, 0.95],
  [18, 1],
]
export const JUNIOR_LENGTH_GIRLS: readonly AgeKnot[] = [
  [5, 0.38],
  [8, 0.57],
  [10, 0.69],
  [12, 0.82],
  [14, 0.93],
  [16, 0.98],
  [18, 1],
]
/** From this age on a player is no junior (common practice). */
export const ADULT_AGE = 18

/** Weight of the men's line when the sex is unstated: about three golfers in four with an index are men (from memory). */
export const MEN_SHARE_WHEN_UNSTATED = 0.75

/**
 * Spread of a drive's direction, degrees, all drives, by handicap index: intercept and slope. Published anchors:
 * Broadie 2008 (tour 4.0, average scores 70–83 5.4, 84–97 6.4, 98–120 8.1) and Broadie & Ko 2009 (averages 80 and
 * 100: 5.5 and 7.9), average scores set 3 strokes above rating plus index. The line misses none by over 0.4°.
 */
export const DRIVE_DIRECTION_SD_DEGREES: { readonly atScratch: number; readonly perStroke: number } = {
  atScratch: 4.62,
  perStroke: 0.115,
}

/**
 * Direction spread of a club as a share of the driver's, by loft, for scratch and for a bogey player. Shape
 * published: Course Rating accuracy table, 67 % on each axis (scratch 4.84° at 250 yd, 2.96° at 150, 3.61° at 90;
 * bogey 4.51° at 190, 3.94° at 150); the bogey player's rise for wedges is halved (our assumption).
 */
export const DIRECTION_BY_LOFT_SCRATCH: readonly LoftKnot[] = [
  [10, 1],
  [15, 0.98],
  [19, 0.95],
  [24, 0.85],
  [30, 0.72],
  [38, 0.65],
  [45, 0.66],
  [52, 0.68],
  [60, 0.74],
]
export const DIRECTION_BY_LOFT_BOGEY: readonly LoftKnot[] = [
  [10, 1],
  [15, 0.97],
  [19, 0.94],
  [24, 0.9],
  [30, 0.86],
  [38, 0.84],
  [45, 0.85],
  [52, 0.89],
  [60, 0.93],
]
/**
 * What a woman's direction and carry spread more than a man's of the same skill with the same club. Published: Course
 * Rating accuracy table, women's columns over men's club by club (carry 1.6 with the driver to 1.2 with wedges for
 * scratch players, 1.1 to 1.4 for bogey players; direction 1.0 to 1.3 and 1.0 to 1.4); set between the two.
 */
export const WOMEN_DIRECTION_BY_LOFT: readonly LoftKnot[] = [
  [10, 1],
  [20, 1.04],
  [30, 1.14],
  [45, 1.14],
  [60, 1.1],
]
export const WOMEN_CARRY_SD_BY_LOFT: readonly LoftKnot[] = [
  [10, 1.4],
  [15, 1.3],
  [20, 1.22],
  [30, 1.26],
  [60, 1.25],
]
/** Handicap index of the bogey player of the Course Rating system (published: men about 20, women about 24). */
export const BOGEY_HANDICAP = 20
export const BOGEY_HANDICAP_WOMEN = 24

/**
 * Spread of carry of good strikes as a share of the carry, driver. Published shape: Course Rating accuracy table,
 * depth on each axis (scratch 4.3 % at 250 yd; bogey 8.5–9 % at 170–190 yd, mishits partly in it).
 */
export const CARRY_SD_SHARE: { readonly atScratch: number; readonly perStroke: number } = {
  atScratch: 0.046,
  perStroke: 0.0017,
}
/** Factor on it by loft. Same table: scratch 4.3 % at 250 yd, 5.5 % at 150, 8.0 % at 90. The wedge end is damped because partial swings are in the table. */
export const CARRY_SD_BY_LOFT: readonly LoftKnot[] = [
  [10, 1.05],
  [19, 1.2],
  [30, 1.15],
  [38, 1.15],
  [45, 1.22],
  [52, 1.32],
  [60, 1.5],
]

/** Share of full shots mishit. Common practice: about 1 in 6 for a club golfer (index about 17), fewer for better players. */
export const MISHIT_SHARE: { readonly atScratch: number; readonly perStroke: number } = {
  atScratch: 0.065,
  perStroke: 0.006,
}
export const MISHIT_SHARE_RANGE: readonly [number, number] = [0.02, 0.55]
/** Factor by loft: long clubs off grass are mishit more, wedges less; the driver has a tee. Our assumption. */
export const MISHIT_BY_LOFT: readonly LoftKnot[] = [
  [10, 1],
  [14, 1.15],
  [18, 1.35],
  [24, 1.3],
  [33, 1],
  [45, 0.85],
  [60, 0.8],
]
/** Mean and spread of a mishit's carry as shares of the stock carry. Our assumption: about 0.55 ± 0.18 at index 17; a better player's mishit is a lesser one. */
export const MISHIT_CARRY_SHARE: { readonly atScratch: number; readonly perStroke: number } = {
  atScratch: 0.7,
  perStroke: -0.0085,
}
export const MISHIT_CARRY_SHARE_RANGE: readonly [number, number] = [0.3, 0.8]
export const MISHIT_CARRY_SD_SHARE: { readonly atScratch: number; readonly perStroke: number } = {
  atScratch: 0.15,
  perStroke: 0.0017,
}
/** Direction spread of a mishit as a multiple of the good strike's. Our assumption; the strike model must use the same. */
export const MISHIT_DIRECTION_FACTOR = 1.7

/** Run of a stock shot on a level normal fairway, yards, by loft. Common practice: driver 20–25, woods 15–20, long irons 10–15, mid irons 5–10, wedges 0–4; Course Rating uses 20 for a tee shot (published). */
export const RUN_YARDS_BY_LOFT: readonly LoftKnot[] = [
  [10, 21],
  [15, 17],
  [21, 13.5],
  [26, 11],
  [30, 8.5],
  [37, 5.5],
  [45, 3],
  [55, 1.2],
  [60, 0.6],
]
/** Run never exceeds this share of the carry (our assumption; matters for very short hitters). */
export const RUN_MOST_SHARE = 0.16

/** Driver carry, metres, at which the carry ladder holds as written; and the exponent that squeezes it for a slow swing. Common practice: a slow swing's gaps are narrower. */
export const LADDER_REFERENCE_CARRY_METRES = 200
export const LADDER_SQUEEZE_PER_HALVING = 0.17
/** The squeeze is held in this range. */
export const LADDER_EXPONENT_RANGE: readonly [number, number] = [0.8, 1.03]

/**
 * How much of a club's difference from the prior a neighbouring club shares. Our assumption, the same as in `DOUBT`:
 * shared variance over all variance of a guessed spread, 0.15² / (0.15² + 0.10²).
 */
export const PATTERN_SHARED_BY_CLUBS = 0.69
/** A typed share under this informs other clubs as if it were this: nothing is learned from a plain 0. */
export const LEAST_KNOWN_SHARE = 0.005

/** Fewer listed clubs than this and the rest of the bag is filled in, unless the file's `bag` says otherwise. Our assumption. */
export const LISTED_CLUBS_THAT_MAKE_A_BAG = 8
/** Clubs besides the putter: Rule 4.1b(1) allows 14. */
export const MOST_CLUBS = 13

/** Handicap index and age, years, that a file may state. Our assumption: beyond them it is a slip of the pen; 54 is the system's highest. */
export const TYPED_HANDICAP_RANGE: readonly [number, number] = [-10, 54]
export const AGE_RANGE: readonly [number, number] = [3, 110]

/** Carry over this is refused as a slip of the pen (metres): the longest tour player averages under 300 m in all. */
export const MOST_CARRY_METRES = 400

/** The furthest a ball stops, and the furthest it lies off the line, metres: beyond it is a slip of the pen. Our assumption. */
export const MOST_TOTAL_METRES = 500
export const MOST_OFFLINE_METRES = 200

/** Wedges with partial swings are those of at least this loft, degrees. Common practice: pitching wedge and up. */
export const PARTIAL_SWING_LEAST_LOFT_DEGREES = 44
/** A partial swing shorter than this carry, metres, is a short-game shot and left out: near-green values hold there. */
export const PARTIAL_SWING_LEAST_CARRY_METRES = 40
/**
 * Stock partial swings: share of the full carry, factor on direction spread, on the spread of carry as a share, on the
 * mishit share, and on the run in metres. Common practice: three-quarter about 4/5 of the carry, half about 3/5;
 * direction steadier, distance less sure for its length. Sizes are our assumption.
 */
export const PARTIAL_SWINGS: readonly {
  readonly shape: 'three-quarter' | 'half'
  readonly carry: number
  readonly direction: number
  readonly carrySd: number
  readonly mishit: number
  readonly run: number
}[] = [
  { shape: 'three-quarter', carry: 0.82, direction: 0.95, carrySd: 1.12, mishit: 0.9, run: 1 },
  { shape: 'half', carry: 0.62, direction: 0.92, carrySd: 1.3, mishit: 0.85, run: 1.1 },
]

/**
 * Low shots with an iron: share of the full carry, run as a share of that carry, factors on direction spread, on the
 * spread of carry as a share and on the mishit share. Common practice: a punch is a short firm swing that flies low,
 * lands flat and runs; steadier in direction, less sure in distance. A chip-out only gets the ball back on the grass.
 * Sizes are our assumption.
 */
export const LOW_SHOTS = {
  punch: { carry: 0.6, run: 0.4, direction: 0.85, carrySd: 1.4, mishit: 0.8 },
  'chip-out': { carry: 0.2, run: 0.6, direction: 0.7, carrySd: 1.8, mishit: 0.5 },
} as const
/** Irons of no more loft than this, degrees, are punched; and the one nearest the second figure chips out. Common practice: long and middle irons, the 7-iron. */
export const PUNCH_MOST_LOFT_DEGREES = 40
export const CHIP_OUT_LOFT_DEGREES = 34

/** How unsure a number is: standard deviation of its logarithm (of its log odds for the mishit share), shared by all clubs and the club's own. */
export interface Doubt {
  readonly shared: number
  readonly own: number
}

/**
 * Doubt about a number that is a guess of the prior, and about one that was typed without shots behind it. Our
 * assumption, held against the published bands: golfers in one band of average score differ in direction spread by
 * about a fifth (Broadie 2008: 5.4, 6.4, 8.1 for bands 14 to 23 strokes wide), and a drive's length at one handicap
 * index by more.
 */
export const DOUBT: {
  readonly spread: { readonly guess: Doubt; readonly typed: Doubt }
  readonly carry: {
    readonly guess: Doubt
    readonly junior: Doubt
    readonly typed: Doubt
    readonly beside: Doubt
    readonly said: Doubt
    readonly besideSaid: Doubt
  }
  readonly mishit: { readonly guess: Doubt; readonly typed: Doubt }
  readonly side: { readonly guess: Doubt; readonly typed: Doubt }
  readonly run: { readonly guess: Doubt; readonly typed: Doubt }
  readonly mishitCarry: { readonly guess: Doubt; readonly typed: Doubt }
  readonly mishitCarrySd: { readonly guess: Doubt; readonly typed: Doubt }
} = {
  spread: { guess: { shared: 0.15, own: 0.1 }, typed: { shared: 0.05, own: 0.07 } },
  // `junior`: children of one age differ in growth; `beside`: a guessed carry in a bag with typed ones.
  // `said`: a carry from memory, which for all clubs alike is of good days or of old ones.
  carry: {
    guess: { shared: 0.05, own: 0.02 },
    junior: { shared: 0.13, own: 0.03 },
    beside: { shared: 0.01, own: 0.02 },
    typed: { shared: 0.005, own: 0.012 },
    said: { shared: 0.025, own: 0.02 },
    besideSaid: { shared: 0.027, own: 0.022 },
  },
  mishit: { guess: { shared: 0.35, own: 0.2 }, typed: { shared: 0.12, own: 0.12 } },
  side: { guess: { shared: 0.1, own: 0.06 }, typed: { shared: 0.02, own: 0.04 } },
  // The three below matter where a player is learned from shots; the draws of a plan leave them where they are.
  // The run's is a share of the run, not of its logarithm.
  run: { guess: { shared: 0.2, own: 0.12 }, typed: { shared: 0.1, own: 0.12 } },
  mishitCarry: { guess: { shared: 0.1, own: 0.06 }, typed: { shared: 0.04, own: 0.05 } },
  mishitCarrySd: { guess: { shared: 0.15, own: 0.1 }, typed: { shared: 0.05, own: 0.07 } },
}
/**
 * How far single runs of one club lie apart: a share of its usual run and the least, metres. From turf, slope and
 * firmness that nobody wrote down; our assumption.
 */
export const RUN_NOISE: { readonly share: number; readonly leastMetres: number } = {
  share: 0.5,
  leastMetres: 2,
}
/** Correlation of the shared doubt about mishits with that about spreads: who strays more mishits more. Our assumption. */
export const MISHIT_SPREAD_CORRELATION = 0.5
