/**
 * Every tuning number of the player room: unit, meaning, and where it comes from. "Published" names the source;
 * "common practice" is what the trade says without a source; "our assumption" is ours alone.
 */

/** A knot of a line over handicap index: [handicap index, value]. */
export type HandicapKnot = readonly [handicapIndex: number, value: number]

/** A knot of a line over loft: [degrees of loft, value]. */
export type LoftKnot = readonly [loftDegrees: number, value: number]

/** Range of handicap index the prior speaks about: −5 stands for a tour player (our assumption), 54 is the World Handicap System's highest. */
export const HANDICAP_RANGE: readonly [number, number] = [-5, 54]

/**
 * Mean total of a man's drive, yards, mishits included. Published: distance report of the governing bodies for
 * 2018 (≤5 240, 6–12 220, 13–20 204, ≥21 187; each band set at its own middle), Course Rating scratch player
 * 250 at 0, main tours of 2019 about 294 at −5. Past 26: our assumption, the same slope.
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
  [15, 0.93],
  [19, 0.84],
  [24, 0.75],
  [30, 0.68],
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
/** Handicap index of the bogey player of the Course Rating system, men (published: about 20). */
export const BOGEY_HANDICAP = 20

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
  [10, 1],
  [19, 1.02],
  [30, 1.1],
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
export const MISHIT_SHARE_RANGE: readonly [number, number] = [0.02, 0.45]
/** Factor by loft: long clubs off grass are mishit more, wedges less; the driver has a tee. Our assumption. */
export const MISHIT_BY_LOFT: readonly LoftKnot[] = [
  [10, 1],
  [14, 1.05],
  [18, 1.15],
  [24, 1.12],
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

/** Fewer listed clubs than this and the rest of the bag is filled in, unless the file's `bag` says otherwise. Our assumption. */
export const LISTED_CLUBS_THAT_MAKE_A_BAG = 8
/** Clubs besides the putter: Rule 4.1b(1) allows 14. */
export const MOST_CLUBS = 13

/** Carry over this is refused as a slip of the pen (metres): the longest tour player averages under 300 m in all. */
export const MOST_CARRY_METRES = 400

/** Radius of the hole, metres. Published: Rules of Golf, diameter 4¼ in (108 mm). */
export const HOLE_RADIUS_METRES = 0.054
/** Radius of the ball, metres. Published: Equipment Rules, diameter at least 1.680 in. */
export const BALL_RADIUS_METRES = 0.021335
/** Fastest ball the hole takes dead centre, m/s. Published: Holmes 1991. Off centre it falls with 1 − (offset/radius)² (Penner 2002, from memory). */
export const CAPTURE_SPEED_METRES_PER_SECOND = 1.63
/** Speed at which the standard ramp lets a ball go, m/s (published: 6.00 ft/s). */
export const RAMP_SPEED_METRES_PER_SECOND = 1.83
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

/**
 * Spread of the stroke by handicap index: [index, direction in degrees, distance as a share]. Published: tour 1.0°
 * and 6.5 %, 8.5 % for a golfer averaging 90 (Bansal & Broadie 2008). The directions are fitted to the published
 * distances from which half are holed and two putts are the average (Broadie 2008: 5.8/25, 5.1/19, 3.8/12 ft).
 */
export const PUTTING_BY_HANDICAP: readonly (readonly [number, number, number])[] = [
  [-5, 1, 0.065],
  [6, 1.8, 0.07],
  [16, 2.1, 0.085],
  [31, 2.7, 0.119],
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

/** What a lie does to a full stock shot. */
export interface LieRule {
  /** Share of the carry that is left, by loft. */
  readonly carry: readonly LoftKnot[]
  /** Spread the lie adds in quadrature: degrees of direction, share of carry. */
  readonly addsDirectionDegrees: number
  readonly addsCarryShare: number
  /** Factor on the mishit share, by loft. */
  readonly mishit: readonly LoftKnot[]
  /** Only clubs of at least this loft, degrees, and woods only where said. */
  readonly leastLoftDegrees: number
  readonly woods: boolean
}

/**
 * Full shots by lie, next to the reference lie (level fairway; the tee for a driver). Shapes are common practice:
 * the worse the grass the less carry and the fewer clubs, long clubs suffering most; fairway bunkers cost long clubs
 * most. Sizes are our assumption, held against one published figure: rough costs a tour player about 0.2 stroke at
 * 50–150 yd (Broadie 2012). Ordered fairway ≥ first-cut ≥ rough ≥ heavy in every number.
 */
export const LIE_RULES: Readonly<
  Record<'tee' | 'fairway' | 'first-cut' | 'rough' | 'heavy' | 'bunker' | 'trees' | 'scrub', LieRule>
> = {
  tee: {
    carry: [[0, 1]],
    addsDirectionDegrees: 0,
    addsCarryShare: 0,
    mishit: [
      [12, 1],
      [15, 0.85],
    ],
    leastLoftDegrees: 0,
    woods: true,
  },
  fairway: {
    carry: [[0, 1]],
    addsDirectionDegrees: 0,
    addsCarryShare: 0,
    mishit: [[0, 1]],
    leastLoftDegrees: 12,
    woods: true,
  },
  'first-cut': {
    carry: [[0, 1]],
    addsDirectionDegrees: 0.8,
    addsCarryShare: 0.02,
    mishit: [
      [15, 1.08],
      [30, 1.04],
      [60, 1.02],
    ],
    leastLoftDegrees: 12,
    woods: true,
  },
  rough: {
    carry: [
      [15, 0.88],
      [30, 0.94],
      [50, 0.97],
    ],
    addsDirectionDegrees: 2,
    addsCarryShare: 0.05,
    mishit: [
      [15, 1.5],
      [30, 1.3],
      [60, 1.15],
    ],
    leastLoftDegrees: 15,
    woods: true,
  },
  heavy: {
    carry: [
      [28, 0.65],
      [40, 0.75],
      [60, 0.8],
    ],
    addsDirectionDegrees: 4,
    addsCarryShare: 0.1,
    mishit: [
      [28, 2.2],
      [60, 1.7],
    ],
    leastLoftDegrees: 33,
    woods: false,
  },
  bunker: {
    carry: [
      [18, 0.88],
      [30, 0.93],
      [50, 0.95],
    ],
    addsDirectionDegrees: 2.5,
    addsCarryShare: 0.07,
    mishit: [
      [18, 2.6],
      [30, 2],
      [60, 1.6],
    ],
    leastLoftDegrees: 18,
    woods: true,
  },
  trees: {
    carry: [[18, 0.55]],
    addsDirectionDegrees: 3,
    addsCarryShare: 0.1,
    mishit: [[18, 1.4]],
    leastLoftDegrees: 20,
    woods: false,
  },
  scrub: {
    carry: [[18, 0.45]],
    addsDirectionDegrees: 4,
    addsCarryShare: 0.14,
    mishit: [[18, 2]],
    leastLoftDegrees: 25,
    woods: false,
  },
}

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
