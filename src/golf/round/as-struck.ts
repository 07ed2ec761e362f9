import type { Candidate } from '#golf/strategy/evaluate-stroke.ts'
import type { HoleModel } from '#golf/strategy/hole-model.ts'
import { outcomePlace } from '#golf/strategy/outcome.ts'
import { outcomeCost } from '#golf/strategy/stroke-cost.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { FINISH_SD_METRES, FINISH_SD_SHARE, LEAST_LIKE_SHARE } from './settings.ts'

/** How a whole shot ended: where it came to rest, or only that it cost a penalty. */
export interface ShotEnd {
  readonly rest: Point
  readonly hasPenalty: boolean
}

/** What a shot was worth as it was struck. */
export interface AsStruck {
  /** Expected strokes, itself counted. */
  readonly strokes: number
  /** How much that varies from strike to strike of the pattern, strokes squared. */
  readonly variance: number
}

/**
 * Expected strokes of a shot struck as this one was, itself counted, given how it ended. Every strike of the pattern may
 * have been the one, the more so the nearer its balls end to where this one did; each is worth what all its balls cost,
 * those that trees catch and those that are lost among them. `null` when the pattern has hardly such a ball.
 */
export function asStruck(
  model: HoleModel,
  values: Float64Array,
  here: number,
  from: Point,
  { ends }: Candidate,
  end: ShotEnd,
): AsStruck | null {
  const { places, costs } = model
  const sd = Math.hypot(FINISH_SD_METRES, FINISH_SD_SHARE * distance(from, end.rest))
  const strikes = new Map<number, { weight: number; cost: number; like: number }>()
  for (let k = 0; k < ends.count; k++) {
    const outcome = ends.outcome[k] as number
    const weight = ends.weight[k] as number
    const place = outcomePlace(places, outcome)
    const isSpecial = costs.isSpecial[outcome] === 1
    const cost = outcomeCost(costs, outcome, values, here)
    const played = isSpecial ? (costs.played[outcome] as number) : 1
    const off = distance(end.rest, [places.x[place] as number, places.y[place] as number]) / sd
    const like = end.hasPenalty ? 1 - played : played * Math.exp(-(off * off) / 2)
    const strike = ends.strike[k] as number
    const known = strikes.get(strike) ?? { weight: 0, cost: 0, like: 0 }
    strikes.set(strike, {
      weight: known.weight + weight,
      cost: known.cost + weight * cost,
      like: known.like + weight * like,
    })
  }
  let like = 0
  let sum = 0
  let [weight, mean, square] = [0, 0, 0]
  for (const strike of strikes.values()) {
    like += strike.like
    sum += (strike.like * strike.cost) / strike.weight
    weight += strike.weight
    mean += strike.cost
    square += strike.cost ** 2 / strike.weight
  }
  if (like < LEAST_LIKE_SHARE) return null
  return { strokes: 1 + sum / like, variance: Math.max(0, square / weight - (mean / weight) ** 2) }
}
