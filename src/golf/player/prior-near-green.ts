import { monotoneCubic } from '#numbers/statistics/monotone-cubic.ts'
import { PUTTING_BY_HANDICAP, STROKES_LOST_BY_HANDICAP } from './near-green-settings.ts'
import type { Putting } from './player.ts'

/** Putting expected of this handicap index: spreads fitted so that half are holed, and two putts are the average, from the published distances. */
export function priorPutting(handicapIndex: number): Putting {
  return {
    directionSdDegrees: monotoneCubic(
      PUTTING_BY_HANDICAP.map(([handicap, direction]) => [handicap, direction] as const),
      handicapIndex,
    ),
    distanceSdShare: monotoneCubic(
      PUTTING_BY_HANDICAP.map(([handicap, , distance]) => [handicap, distance] as const),
      handicapIndex,
    ),
  }
}

/** Strokes lost to a tour player on a chip or pitch from 20 m of fairway, expected of this handicap index. */
export function priorStrokesLost(handicapIndex: number): number {
  return monotoneCubic(STROKES_LOST_BY_HANDICAP, handicapIndex)
}
