import type { Lie } from './player.ts'
import type { LoftKnot } from './settings.ts'

/** How the ball is played from near the green. */
export const SHORT_SHOT_KINDS = ['putt', 'chip', 'pitch', 'lob', 'sand'] as const
export type ShortShotKind = (typeof SHORT_SHOT_KINDS)[number]

/** Green speed to which the carry-to-roll ladder refers, feet on the ramp. Our assumption; the ladder's sources name none. */
export const LADDER_GREEN_SPEED_FEET = 10

/**
 * Roll per carry of a chip by loft, level green. Common practice, ladder A of `chip_carry_roll.csv` (sand wedge 1,
 * pitching wedge 2, 9-iron 3 … 5-iron 7); gap wedge from ladder B; 60° ours. Published ladders disagree by a factor
 * of two, so it is a starting value that the professional overwrites.
 */
export const ROLL_PER_CARRY_BY_LOFT: readonly LoftKnot[] = [
  [22, 8.2],
  [27, 7],
  [30, 6],
  [34, 5],
  [38, 4],
  [42, 3],
  [46, 2],
  [51, 1.5],
  [56, 1],
  [60, 0.75],
]
/** A ladder of the professional's own is between these. Our assumption: beyond them it is a slip. */
export const ROLL_PER_CARRY_RANGE: readonly [number, number] = [0.05, 20]

/** How a kind of shot flies and rolls next to a chip with the same club. */
export interface ShortShotRule {
  /** Roll per carry as a share of the chip's. Pitch: ladder D of the same file (pitching wedge 1); lob and sand: our assumption. */
  readonly rollShare: number
  /** Launch as a share of the loft: for the picture only. Our assumption. */
  readonly launchShare: number
  /** Clubs of this loft and more, degrees; common practice. */
  readonly leastLoftDegrees: number
  /** Carries it is played over, metres. Common practice: a chip is short and low, a pitch has a swing. */
  readonly carryMetres: readonly [number, number]
  /** Factors on the player's spreads and poor strikes against a chip. Common practice in order, sizes ours. */
  readonly spread: number
  readonly poor: number
  readonly lies: readonly Lie[]
}

const GRASS: readonly Lie[] = ['fringe', 'tee', 'fairway', 'first-cut', 'rough', 'heavy', 'trees', 'scrub']
export const SHORT_SHOT_RULES: Readonly<Record<Exclude<ShortShotKind, 'putt'>, ShortShotRule>> = {
  chip: {
    rollShare: 1,
    launchShare: 0.6,
    leastLoftDegrees: 26,
    carryMetres: [1, 16],
    spread: 1,
    poor: 1,
    lies: GRASS,
  },
  pitch: {
    rollShare: 0.5,
    launchShare: 0.8,
    leastLoftDegrees: 44,
    carryMetres: [6, 50],
    spread: 1.13,
    poor: 1.3,
    lies: GRASS,
  },
  lob: {
    rollShare: 0.35,
    launchShare: 1,
    leastLoftDegrees: 55,
    carryMetres: [6, 30],
    spread: 1.2,
    poor: 1.8,
    lies: ['fairway', 'first-cut', 'rough', 'fringe', 'tee'],
  },
  sand: {
    rollShare: 0.6,
    launchShare: 0.9,
    leastLoftDegrees: 50,
    carryMetres: [2, 50],
    spread: 1,
    poor: 1,
    lies: ['bunker'],
  },
}

/** What a lie does to a short shot, next to mown fairway. Order common practice, sizes fitted (see `docs/method.md`, 6). */
export interface ShortLieRule {
  /** Factors on the spread of carry, its share and its fixed metres, on direction and roll, and on the share of poor strikes. */
  readonly carry: number
  readonly metres: number
  readonly direction: number
  readonly roll: number
  readonly poor: number
  /** Share of shots that branches or stems catch, to be left where fat ones are. */
  readonly caught: number
  /** Factor on the roll: less spin out of grass. */
  readonly run: number
  /** Least loft played, degrees. Common practice. */
  readonly leastLoftDegrees: number
}

export type ShortLie = Exclude<Lie, 'green' | 'tee' | 'fringe'>
export const SHORT_LIE_RULES: Readonly<Record<ShortLie, ShortLieRule>> = {
  fairway: { carry: 1, metres: 1, direction: 1, roll: 1, poor: 1, caught: 0, run: 1, leastLoftDegrees: 0 },
  'first-cut': {
    carry: 1,
    metres: 1,
    direction: 1.05,
    roll: 1.4,
    poor: 1.03,
    caught: 0,
    run: 1.1,
    leastLoftDegrees: 30,
  },
  rough: {
    carry: 1,
    metres: 1.3,
    direction: 1.3,
    roll: 3.2,
    poor: 1.25,
    caught: 0,
    run: 1.4,
    leastLoftDegrees: 42,
  },
  heavy: {
    carry: 1.1,
    metres: 1.5,
    direction: 1.6,
    roll: 3.6,
    poor: 2.6,
    caught: 0,
    run: 1.25,
    leastLoftDegrees: 50,
  },
  bunker: {
    carry: 1.4,
    metres: 1.55,
    direction: 1.6,
    roll: 1.3,
    poor: 2.3,
    caught: 0,
    run: 1,
    leastLoftDegrees: 50,
  },
  trees: {
    carry: 1.4,
    metres: 1.5,
    direction: 1.8,
    roll: 3.6,
    poor: 4,
    caught: 0.28,
    run: 1.25,
    leastLoftDegrees: 30,
  },
  scrub: {
    carry: 1.5,
    metres: 1.7,
    direction: 2,
    roll: 3.6,
    poor: 7,
    caught: 0.45,
    run: 1.25,
    leastLoftDegrees: 46,
  },
}

/**
 * Errors of a chip from fairway at a strokes-lost figure L: `at + per·L`. Fitted with the lie rules so that the best shot
 * on a level plain green is worth what the published tables and the losses by level say (`docs/method.md`, 6).
 */
export const SHORT_SPREAD = {
  /** Share of the carry. */
  carrySdShare: { at: 0.05, per: 0.09 },
  /** Metres of carry and roll together that are added to it; less below {@link SHORT_METRES_FROM}. */
  carrySdMetres: { at: 1.55, per: 2.2 },
  directionSdDegrees: { at: 1.4, per: 2.6 },
  /** Share of the roll: how the first bounce takes. */
  rollSdShare: { at: 0.06, per: 0.05 },
  poorShare: { at: 0.006, per: 0.15 },
} as const
/**
 * Factors on the spreads and on the share of poor strikes by loft: the lower shot is the safer where both can be played.
 * Common practice in order, sizes ours.
 */
export const SHORT_SPREAD_BY_LOFT: readonly LoftKnot[] = [
  [27, 0.9],
  [46, 1],
  [60, 1.2],
]
export const SHORT_POOR_BY_LOFT: readonly LoftKnot[] = [
  [27, 0.7],
  [46, 1],
  [60, 1.35],
]
/** The fixed metres are reached with this length of shot: at it 63 % of them, at twice 86 %. Fitted. */
export const SHORT_METRES_FROM = 7
/** No more than this share of short shots is poorly struck. Our assumption. */
export const MOST_POOR_SHARE = 0.6

/** A fat strike carries this share of what was meant (mean, spread); a thin one this much, and rolls as if from a lower flight. Our assumption. */
export const FAT_CARRY: readonly [number, number] = [0.3, 0.12]
export const THIN_CARRY: readonly [number, number] = [1.35, 0.2]
export const THIN_ROLL_FACTOR = 2
/** Out of sand a fat strike moves the ball hardly at all, and a thin one flies. Our assumption. */
export const FAT_SAND_CARRY: readonly [number, number] = [0.12, 0.08]
export const THIN_SAND_CARRY: readonly [number, number] = [1.7, 0.25]
/** Of poor strikes this share is fat. Our assumption. */
export const FAT_SHARE = 0.5

/** A putt from off the green: factors on both spreads of the putt. Fringe as in `near-green-settings.ts`; fairway our assumption. */
export const FAIRWAY_PUTT_DIRECTION_FACTOR = 1.4
export const FAIRWAY_PUTT_DISTANCE_FACTOR = 2.6
/** A chip with its landing spot given should stop this far past the hole, metres. Common practice: about a foot. */
export const LADDER_PAST_METRES = 0.3
