import type { LieName } from './player.ts'
import type { LoftKnot } from './settings.ts'

/** What a lie does to a full stock shot. */
export interface LieRule {
  /** Share of the carry that is left, by loft. */
  readonly carry: readonly LoftKnot[]
  /** Share of that which a full swing keeps where branches are in its way; absent = it has room. */
  readonly fullSwing?: number
  /** Spread the lie adds in quadrature: degrees of direction, share of carry. */
  readonly addsDirectionDegrees: number
  readonly addsCarryShare: number
  /** Factor on the mishit share, by loft. */
  readonly mishit: readonly LoftKnot[]
  /** Backspin that is left, as a share of the stock shot's: grass between ball and face takes some, and the ball runs on. 1 for a lie that has not been seen: what spin it costs on average is in the figures it was held against. */
  readonly spin: number
  /** Only clubs of at least this loft, degrees, and woods only where said. */
  readonly leastLoftDegrees: number
  readonly woods: boolean
}

/**
 * Full shots by lie, next to the reference lie (level fairway; the tee for a driver). Shapes are common practice:
 * the worse the grass the less carry and the fewer clubs, long clubs suffering most; fairway bunkers cost long clubs
 * most. Sizes are our assumption, held against one published figure: rough costs a tour player about 0.2 stroke at
 * 50–150 yd (Broadie 2012; `tour-approach.test.ts` measures it). Ordered fairway ≥ first-cut ≥ rough ≥ heavy in every number.
 */
export const LIE_RULES: Readonly<Record<Exclude<LieName, 'fringe' | 'green'>, LieRule>> = {
  tee: {
    carry: [[0, 1]],
    addsDirectionDegrees: 0,
    addsCarryShare: 0,
    mishit: [
      [12, 1],
      [15, 0.85],
    ],
    spin: 1,
    leastLoftDegrees: 0,
    woods: true,
  },
  fairway: {
    carry: [[0, 1]],
    addsDirectionDegrees: 0,
    addsCarryShare: 0,
    mishit: [[0, 1]],
    spin: 1,
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
    spin: 1,
    leastLoftDegrees: 12,
    woods: true,
  },
  // A little grass behind the ball takes spin: it goes a little further with less stop.
  'first-cut:flier': {
    carry: [
      [15, 1],
      [30, 1.015],
      [45, 1.02],
    ],
    addsDirectionDegrees: 1,
    addsCarryShare: 0.03,
    mishit: [
      [15, 1.08],
      [30, 1.04],
      [60, 1.02],
    ],
    spin: 0.75,
    leastLoftDegrees: 12,
    woods: true,
  },
  rough: {
    carry: [
      [15, 0.88],
      [30, 0.94],
      [50, 0.97],
    ],
    addsDirectionDegrees: 2.6,
    addsCarryShare: 0.085,
    mishit: [
      [15, 1.5],
      [30, 1.3],
      [60, 1.15],
    ],
    spin: 1,
    leastLoftDegrees: 15,
    woods: true,
  },
  'rough:good': {
    carry: [
      [15, 0.92],
      [30, 0.98],
      [50, 1.01],
    ],
    addsDirectionDegrees: 1.8,
    addsCarryShare: 0.06,
    mishit: [
      [15, 1.25],
      [30, 1.15],
      [60, 1.05],
    ],
    spin: 0.7,
    leastLoftDegrees: 15,
    woods: true,
  },
  'rough:down': {
    carry: [
      [15, 0.84],
      [30, 0.9],
      [50, 0.93],
    ],
    addsDirectionDegrees: 3.2,
    addsCarryShare: 0.0875,
    mishit: [
      [15, 1.75],
      [30, 1.45],
      [60, 1.25],
    ],
    spin: 0.6,
    leastLoftDegrees: 22,
    woods: false,
  },
  heavy: {
    carry: [
      [28, 0.65],
      [40, 0.75],
      [60, 0.8],
    ],
    addsDirectionDegrees: 4.5,
    addsCarryShare: 0.14,
    mishit: [
      [28, 2.2],
      [60, 1.7],
    ],
    spin: 1,
    leastLoftDegrees: 33,
    woods: false,
  },
  bunker: {
    carry: [
      [18, 0.88],
      [30, 0.93],
      [50, 0.95],
    ],
    addsDirectionDegrees: 3.5,
    addsCarryShare: 0.13,
    mishit: [
      [18, 2.6],
      [30, 2],
      [60, 1.6],
    ],
    spin: 1,
    leastLoftDegrees: 18,
    woods: true,
  },
  trees: {
    carry: [[18, 0.93]],
    fullSwing: 0.85,
    addsDirectionDegrees: 3,
    addsCarryShare: 0.1,
    mishit: [[18, 1.4]],
    spin: 1,
    leastLoftDegrees: 20,
    woods: false,
  },
  scrub: {
    carry: [[18, 0.7]],
    fullSwing: 0.85,
    addsDirectionDegrees: 5,
    addsCarryShare: 0.14,
    mishit: [[18, 2]],
    spin: 1,
    leastLoftDegrees: 25,
    woods: false,
  },
  // Sand to the half of the ball and more: only steep wedges get it out, and not far.
  'bunker:plugged': {
    carry: [
      [44, 0.4],
      [60, 0.5],
    ],
    addsDirectionDegrees: 6,
    addsCarryShare: 0.22,
    mishit: [[44, 3]],
    spin: 0.4,
    leastLoftDegrees: 44,
    woods: false,
  },
  // Nothing under the ball to help a club that comes in a little high or low.
  bare: {
    carry: [[0, 0.99]],
    addsDirectionDegrees: 0.6,
    addsCarryShare: 0.02,
    mishit: [
      [15, 1.6],
      [30, 1.35],
      [60, 1.4],
    ],
    spin: 1.05,
    leastLoftDegrees: 15,
    woods: true,
  },
}

/**
 * Share of balls in rough that sit down, by what the day says of the rough. Until the ball is seen a plan takes both
 * together: at `normal` with the numbers that were held against the published figure, from which the mixture of the two
 * differs by less than a half per cent (test). Our assumption.
 */
export const SITTING_DOWN_SHARE = { short: 0.25, normal: 0.5, long: 0.75 } as const
