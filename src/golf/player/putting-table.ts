import { normalCdf, normalPdf, normalQuantile } from '#numbers/statistics/normal.ts'
import { degreesToRadians, feetToMetres } from '#numbers/units/units.ts'
import type { Putting } from './player.ts'
import {
  CAPTURE_SPEED_METRES_PER_SECOND,
  HOLE_RADIUS_METRES,
  PUTT_PAST_METRES,
  PUTTING_GREEN_SPEED_FEET,
  RAMP_SPEED_METRES_PER_SECOND,
} from './settings.ts'

/** Putting on a flat green at the nodes of {@link PUTT_NODES}: expected putts, chance of one putt and of two. */
export interface PuttingTable {
  readonly expected: Float64Array
  readonly one: Float64Array
  readonly two: Float64Array
}

/** Distances of the table, metres: every 0.1 to 3, every 0.25 to 12, every 1 to 60. */
export const PUTT_NODES: Float64Array = Float64Array.from([
  ...Array.from({ length: 30 }, (_, index) => index * 0.1),
  ...Array.from({ length: 36 }, (_, index) => 3 + index * 0.25),
  ...Array.from({ length: 49 }, (_, index) => 12 + index),
])

/** Deceleration of a rolling ball, m/s²: v₀²/2S. */
const DECELERATION = RAMP_SPEED_METRES_PER_SECOND ** 2 / (2 * feetToMetres(PUTTING_GREEN_SPEED_FEET))

/** Eight-point Gauss–Legendre rule on [−1, 1]: positive abscissae and their weights. */
const GAUSS: readonly (readonly [number, number])[] = [
  [0.1834346424956498, 0.362683783378362],
  [0.525532409916329, 0.3137066458778873],
  [0.7966664774136267, 0.2223810344533745],
  [0.9602898564975363, 0.1012285362903763],
]
const FURTHEST_Z = 4.5
const MISS_STRATA = 5
/** So nearly certain that the angles of the misses are beyond double precision. */
const NEVER_MISSED = 1 - 1e-13

/**
 * Expected putts by value iteration. The ball starts off line by a normal angle and would roll a distance with a
 * normal relative error; it is holed where it crosses the hole slower than the capture speed at that offset, and the
 * rest is putted from where it stops. At every distance the pace with the fewest expected putts is taken.
 */
export function puttingTable(putting: Putting): PuttingTable {
  const count = PUTT_NODES.length
  const expected = new Float64Array(count).fill(2)
  const one = new Float64Array(count).fill(1)
  const two = new Float64Array(count)
  const pace = new Float64Array(count)
  expected[0] = 1
  for (let sweep = 0; sweep < 40; sweep += 1) {
    let change = 0
    for (let node = 1; node < count; node += 1) {
      let best = Number.POSITIVE_INFINITY
      for (const past of PUTT_PAST_METRES) {
        const putt = playPutt(putting, PUTT_NODES[node] ?? 0, past, expected)
        if (1 + putt.onward >= best) continue
        best = 1 + putt.onward
        one[node] = putt.holed
        pace[node] = past
      }
      // A longer putt is never easier: a dip would be quadrature, not golf.
      best = Math.max(best, expected[node - 1] ?? 1)
      change = Math.max(change, Math.abs(best - (expected[node] ?? 0)))
      expected[node] = best
    }
    if (change < 1e-9) break
  }
  for (let node = 1; node < count; node += 1) {
    two[node] = playPutt(putting, PUTT_NODES[node] ?? 0, pace[node] ?? 0, one).onward
  }
  return { expected, one, two }
}

/** Value at `metres` on the straight pieces between the nodes; the last node's beyond the table. */
export function puttingTableAt(values: Float64Array, metres: number): number {
  const place =
    metres < 3
      ? Math.max(0, metres) * 10
      : metres < 12
        ? 30 + (metres - 3) * 4
        : 66 + Math.min(48, metres - 12)
  const low = Math.min(values.length - 2, Math.floor(place))
  const share = place - low
  return (values[low] ?? 0) * (1 - share) + (values[low + 1] ?? 0) * share
}

/** Chance of holing, and the mean of `values` where the ball stops (nothing added when holed). */
function playPutt(
  putting: Putting,
  distance: number,
  past: number,
  values: Float64Array,
): { readonly holed: number; readonly onward: number } {
  const sigma = degreesToRadians(putting.directionSdDegrees)
  const planned = distance + past
  const reaches = (distance / planned - 1) / putting.distanceSdShare
  const tooFastPast = CAPTURE_SPEED_METRES_PER_SECOND ** 2 / (2 * DECELERATION)
  const tooFast = ((distance + tooFastPast) / planned - 1) / putting.distanceSdShare
  let holed = 0
  let onward = 0
  let mass = 0
  // The integrand has kinks where the ball just reaches the hole and where it is just too fast: one panel each side.
  const cuts = [-FURTHEST_Z, Math.max(-FURTHEST_Z, reaches), Math.min(FURTHEST_Z, tooFast), FURTHEST_Z]
  for (let panel = 0; panel < 3; panel += 1) {
    const from = cuts[panel] ?? 0
    const to = cuts[panel + 1] ?? 0
    if (to <= from) continue
    for (const [abscissa, gauss] of GAUSS) {
      for (const sign of [-1, 1]) {
        const z = (from + to) / 2 + (sign * abscissa * (to - from)) / 2
        const weight = (gauss * (to - from) * normalPdf(z)) / 2
        const rolls = Math.max(0, planned * (1 + putting.distanceSdShare * z))
        const taken = panel === 1 ? captureShare(rolls - distance, distance, sigma) : 0
        mass += weight
        holed += weight * taken
        if (taken < NEVER_MISSED)
          onward += weight * (1 - taken) * meanAfterMiss(rolls, distance, sigma, taken, values)
      }
    }
  }
  return { holed: holed / mass, onward: onward / mass }
}

/** Share of directions holed by a ball that would stop `past` metres beyond the hole. */
function captureShare(past: number, distance: number, sigma: number): number {
  const speed = Math.sqrt(2 * DECELERATION * Math.max(0, past))
  const width = HOLE_RADIUS_METRES * Math.sqrt(Math.max(0, 1 - speed / CAPTURE_SPEED_METRES_PER_SECOND))
  if (width >= distance) return 1
  return 2 * normalCdf(Math.asin(width / distance) / sigma) - 1
}

/** Mean of `values` where a missed ball stops: equal-chance strata of the angles outside the window. */
function meanAfterMiss(
  rolls: number,
  distance: number,
  sigma: number,
  taken: number,
  values: Float64Array,
): number {
  let sum = 0
  for (let stratum = 0; stratum < MISS_STRATA; stratum += 1) {
    const u = taken + ((1 - taken) * (stratum + 0.5)) / MISS_STRATA
    const angle = sigma * normalQuantile((1 + u) / 2)
    const along = rolls * Math.cos(angle) - distance
    sum += puttingTableAt(values, Math.hypot(along, rolls * Math.sin(angle)))
  }
  return sum / MISS_STRATA
}
