/**
 * Run of a drive on each surface as a share of its run on a level fairway. It is the surface's hardness as well: see
 * `turf.ts`. The order fairway > first cut > rough > heavy is common practice, the figures are our assumption; greens are
 * watered, so they are softer than the fairway of the same day.
 */
export const RUN_SHARES = {
  tee: 1,
  fairway: 1,
  path: 1,
  fringe: 0.8,
  'first-cut': 0.7,
  green: 0.7,
  rough: 0.35,
  trees: 0.3,
  heavy: 0.15,
  scrub: 0.1,
  bunker: 0,
} as const
/** The share of rough by what the day says of it: always between heavy and first cut. Our assumption. */
export const RUN_SHARES_OF_ROUGH = { short: 0.48, normal: 0.35, long: 0.24 } as const

/**
 * Factor on the tilt of the published crater by hardness. Each is the tilt at which a drive (25 m/s, 38°, 2,100 rev/min)
 * runs so many times as far as on the published turf, with the share of normal speed kept times hardness^0.25: worked
 * out by halving, so that `firmness` multiplies a drive's run as the day file promises (soft 0.4, normal 1, firm 1.7).
 * The exponent is our assumption.
 */
export const TILT_BY_HARDNESS: readonly (readonly [hardness: number, factor: number])[] = [
  [0.02, 1.7502],
  [0.05, 1.6597],
  [0.1, 1.566],
  [0.15, 1.4966],
  [0.2, 1.4485],
  [0.3, 1.3685],
  [0.4, 1.2986],
  [0.55, 1.2087],
  [0.7, 1.1298],
  [0.85, 1.061],
  [1, 1],
  [1.3, 0.8936],
  [1.7, 0.7808],
  [2, 0.7115],
  [2.5, 0.6176],
]
export const RESTITUTION_EXPONENT = 0.25

/** Rolling friction as a multiple of the published turf's. The order is common practice, the figures are our assumption. */
export const ROLLING_FACTORS = {
  tee: 1,
  fairway: 1,
  path: 0.7,
  fringe: 1.1,
  'first-cut': 1.5,
  rough: 3,
  trees: 3,
  heavy: 6,
  scrub: 8,
} as const
/** A mishit comes in without the spin that stops a ball on a green: its run there is at least this share of its run on the fairway. Our assumption. */
export const LEAST_MISHIT_GREEN_SHARE = 0.7
/** Slope of a green at which landings are worked out besides level, metres a metre: between them straight lines. */
export const GREEN_GRADE = 0.04
/** Slopes of a green beyond this, metres a metre, change a run no more. Our assumption: no ball stays there. */
export const MOST_GREEN_GRADE = 0.08
