import { BALL_RADIUS } from '#golf/ball/flight-settings.ts'
import { HOLE_RADIUS_METRES } from '#golf/ball/green-settings.ts'
import { normalCdf } from '#numbers/statistics/normal.ts'

/** Putts from one distance: how many were tried and how many went in. */
export interface PuttCount {
  readonly metres: number
  readonly tries: number
  readonly holed: number
}

/** Chance that a putt of this length is holed when only its direction errs, by `sigma` radians: p = 2Φ(asin((R − r)/x)/σ) − 1 (Gelman & Nolan 2002). */
export function angleOnlyChance(metres: number, sigma: number): number {
  const reach = HOLE_RADIUS_METRES - BALL_RADIUS
  if (metres <= reach) return 1
  return 2 * normalCdf(Math.asin(reach / metres) / sigma) - 1
}

/** Direction spread of a putter in radians by maximum likelihood of the angle-only model, from 0.05° to 15°; golden-section search. */
export function fitPuttingAngle(counts: readonly PuttCount[]): number {
  const loss = (sigma: number): number => {
    let sum = 0
    for (const { metres, tries, holed } of counts) {
      const chance = Math.min(1 - 1e-12, Math.max(1e-12, angleOnlyChance(metres, sigma)))
      sum -= holed * Math.log(chance) + (tries - holed) * Math.log(1 - chance)
    }
    return sum
  }
  const golden = (Math.sqrt(5) - 1) / 2
  let low = 0.001
  let high = 0.25
  while (high - low > 1e-9) {
    const left = high - golden * (high - low)
    const right = low + golden * (high - low)
    if (loss(left) < loss(right)) high = right
    else low = left
  }
  return (low + high) / 2
}
