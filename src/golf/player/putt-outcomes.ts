import { CAPTURE_SPEED_METRES_PER_SECOND } from '#golf/ball/green-settings.ts'
import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { captureWidth } from '#golf/ball/hole-pass.ts'
import { normalCdf, normalPdf, normalQuantile } from '#numbers/statistics/normal.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { PUTTING_GREEN_SPEED_FEET } from './near-green-settings.ts'
import type { Putting } from './player.ts'

/** What one putt on a flat green leads to. */
export interface PuttOutcomes {
  /** Chance of holing it. */
  readonly holed: number
  /** Where the missed balls stop, metres from the hole, and the chance of each; with `holed` they add up to 1. */
  readonly restMetres: Float64Array
  readonly weight: Float64Array
}

const DECELERATION = greenSlowing(PUTTING_GREEN_SPEED_FEET)
/** How far past the hole the fastest ball that falls dead centre would stop, metres. */
const FURTHEST_PAST = CAPTURE_SPEED_METRES_PER_SECOND ** 2 / (2 * DECELERATION)

/** Eight-point Gauss–Legendre rule on [−1, 1]: abscissae and weights. */
const GAUSS: readonly (readonly [number, number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
].flatMap(([abscissa = 0, weight = 0]) => [[-abscissa, weight] as const, [abscissa, weight] as const])
const FURTHEST_Z = 4.5
const MISS_STRATA = 5
/** So nearly certain that the angles of the misses are beyond double precision. */
const NEVER_MISSED = 1 - 1e-13

/**
 * A putt from `distance` metres, meant to stop `past` metres beyond the hole. The ball starts off line by a normal
 * angle and would roll a distance with a normal relative error; it is holed where it crosses the hole slower than
 * the hole takes a ball at that offset (v ≤ 1.63 (1 − (δ/R)²), Holmes 1991 and Penner 2002). Otherwise it stops where
 * it would have stopped without a hole.
 */
export function puttOutcomes(putting: Putting, distance: number, past: number): PuttOutcomes {
  const sigma = degreesToRadians(putting.directionSdDegrees)
  const planned = distance + past
  const reaches = (distance / planned - 1) / putting.distanceSdShare
  const tooFast = ((distance + FURTHEST_PAST) / planned - 1) / putting.distanceSdShare
  const rest: number[] = []
  const weights: number[] = []
  let holed = 0
  let mass = 0
  // The integrand has kinks where the ball just reaches the hole and where it is just too fast: one panel each side.
  const cuts = [-FURTHEST_Z, Math.max(-FURTHEST_Z, reaches), Math.min(FURTHEST_Z, tooFast), FURTHEST_Z]
  for (let panel = 0; panel < 3; panel += 1) {
    const from = cuts[panel] ?? 0
    const to = cuts[panel + 1] ?? 0
    if (to <= from) continue
    for (const [abscissa, gauss] of GAUSS) {
      const z = (from + to) / 2 + (abscissa * (to - from)) / 2
      const weight = (gauss * (to - from) * normalPdf(z)) / 2
      const rolls = Math.max(0, planned * (1 + putting.distanceSdShare * z))
      const taken = panel === 1 ? captureShare(rolls - distance, distance, sigma) : 0
      mass += weight
      holed += weight * taken
      if (taken >= NEVER_MISSED) continue
      for (let stratum = 0; stratum < MISS_STRATA; stratum += 1) {
        const u = taken + ((1 - taken) * (stratum + 0.5)) / MISS_STRATA
        const angle = sigma * normalQuantile((1 + u) / 2)
        rest.push(Math.hypot(rolls * Math.cos(angle) - distance, rolls * Math.sin(angle)))
        weights.push((weight * (1 - taken)) / MISS_STRATA)
      }
    }
  }
  return {
    holed: holed / mass,
    restMetres: Float64Array.from(rest),
    weight: Float64Array.from(weights, (weight) => weight / mass),
  }
}

/** Share of directions holed by a ball that would stop `past` metres beyond the hole. */
function captureShare(past: number, distance: number, sigma: number): number {
  const speed = Math.sqrt(2 * DECELERATION * Math.max(0, past))
  const width = captureWidth(speed)
  if (width >= distance) return 1
  return 2 * normalCdf(Math.asin(width / distance) / sigma) - 1
}
