import type { LearnedNearGreen, TestedNumber } from '#golf/player/near-green-posterior.ts'

/** Putting and short game as they were learned, in degrees, shares and strokes. */
export function nearGreenDocument(learned: LearnedNearGreen): object {
  return {
    putts: learned.putts,
    short_shots: learned.shortShots,
    putting_direction_sd_deg: numberDocument(learned.directionSdDegrees),
    putting_distance_sd_share: numberDocument(learned.distanceSdShare),
    strokes_lost: numberDocument(learned.strokesLost),
  }
}

function numberDocument({ before, after, ninety }: TestedNumber): object {
  return { before, after, low: ninety[0], high: ninety[1] }
}
