import type { LoftKnot } from './settings.ts'

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
 * 50–150 yd (Broadie 2012; `tour-approach.test.ts` measures it). Ordered fairway ≥ first-cut ≥ rough ≥ heavy in every number.
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
    addsDirectionDegrees: 2.6,
    addsCarryShare: 0.085,
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
    addsDirectionDegrees: 4.5,
    addsCarryShare: 0.14,
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
    addsDirectionDegrees: 3.5,
    addsCarryShare: 0.13,
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
    addsDirectionDegrees: 5,
    addsCarryShare: 0.14,
    mishit: [[18, 2]],
    leastLoftDegrees: 25,
    woods: false,
  },
}
