/** Tuning numbers of learning a player from shots: unit, meaning, source. The doubts before any shot stand in `DOUBT`. */

/** After so many days a shot counts half. Our assumption: a pattern holds for about a season. */
export const HALF_LIFE_DAYS = 365

/** Spread of how far carry swings between the year's middle and its warmest week, as a share. Our assumption: ball and air lose about 1 % a 7 °C (common practice), and a mild year swings by 8 °C either way. */
export const SEASON_SD_SHARE = 0.012
/** Day of the year on which the north is warmest (common practice); in the south the learned swing is negative. */
export const WARMEST_DAY = 201
/** Shots whose places in the year spread less than this (wave from −1 to 1) say nothing of the season. Our assumption. */
export const LEAST_SEASON_SPREAD = 0.2

/**
 * Chance that a shot is neither a strike nor a mishit of this club: a slip of the pen, another club, another unit. It
 * may then be anything up to so many times the club's carry, in any direction, so many degrees in all. Our assumption.
 */
export const STRAY = { share: 0.002, mostCarryShare: 2.5, degrees: 180 } as const
/** The same for a run alone, a path or a bank: any of so many metres. Our assumption. */
export const STRAY_RUN = { share: 0.01, metres: 120 } as const
/** Single runs of mishits lie so many times further apart than those of good strikes. Our assumption. */
export const MISHIT_RUN_FACTOR = 3
/** A mishit that carries less than this share of the stock carry is only known to be shorter: a topped ball. Our assumption; plans let no mishit carry less than half of it. */
export const TOPPED_CARRY_SHARE = 0.1

/** Sweeps of the sampler that are thrown away, and that are kept: as many as the budget of visited shots allows. */
export const SETTLING_SWEEPS = 80
export const KEPT_SWEEPS = { least: 400, most: 1000, visitedShots: 1_000_000 } as const
/**
 * How far a number moves when it really changes: standard deviation, on the scale of its doubt (logarithm; log odds for
 * the mishit share; share of the run). Our assumption: a lesson or a winter changes a spread by a fifth, a carry by 4 %.
 */
export const CHANGE_SIZE = {
  carry: 0.04,
  run: 0.3,
  directionSd: 0.2,
  carrySd: 0.2,
  side: 0.1,
  mishit: 0.5,
  mishitCarry: 0.1,
  mishitCarrySd: 0.2,
} as const
/** Share of numbers that really change, before the shots are looked at. Our assumption. */
export const CHANCE_OF_CHANGE = 0.25

/**
 * How far a player's own factors of a lie are from the assumed ones, common to all clubs: standard deviation of the
 * logarithm. Our assumption: grass takes carry from a slow swing twice as it does from a fast one, and the more the lie
 * takes the less is known of it; lies differ in what they add to a spread by a sixth, in mishits by a fourth.
 */
export const LIE_DOUBT = {
  carry: { 'first-cut': 0.02, rough: 0.04, heavy: 0.1, bunker: 0.06 },
  direction: 0.15,
  distance: 0.15,
  mishit: 0.25,
} as const
/**
 * What one shot from a lie tells of its factors: 1 / variance of the logarithm. Three in four are good strikes of a
 * spread of carry of about 15 % there; a good strike tells 2 of a spread (as everywhere), one in four mishits.
 */
export const LIE_SHOT_TELLS = { carry: 33, direction: 2, distance: 1.5, mishit: 0.3 } as const
