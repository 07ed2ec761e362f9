import type { Point } from '#numbers/geometry/point.ts'
import { OUT_OF_BOUNDS, OUTCOME_KINDS, type Outcome } from './outcome.ts'
import type { Places } from './places.ts'
import { type Relief, reliefPlaces } from './relief-places.ts'

/** What each outcome costs from here on, for given values of all places. */
export interface OutcomeCosts {
  /** 0 where an outcome simply costs the value of its place. */
  readonly isSpecial: Uint8Array
  /** Shares of an outcome that are played as they lie, that take relief, and that go back at once. */
  readonly played: Float64Array
  readonly relieved: Float64Array
  readonly returned: Float64Array
  /** Cheapest relief other than stroke and distance, penalty included; infinite when there is none. */
  reliefCost(outcome: Outcome, values: Float64Array): number
  /** Where that relief is dropped, −1 when there is none. */
  reliefPlace(outcome: Outcome, values: Float64Array): number
  /** Forget relief costs that were worked out from older values. */
  valuesMoved(): void
}

/** Sets out the outcomes of a hole: their shares depend on the ground, their costs on the values. */
export function outcomeCosts(places: Places, pin: Point, localRules: readonly string[]): OutcomeCosts {
  const size = places.count * OUTCOME_KINDS
  const hasLocalRuleE5 = localRules.includes('E-5')
  const isSpecial = new Uint8Array(size)
  const played = new Float64Array(size)
  const relieved = new Float64Array(size)
  const returned = new Float64Array(size)
  for (let place = 0; place < places.count; place++) {
    const unplayable = places.unplayable[place] as number
    const lost = places.lost[place] as number
    isSpecial[place] = unplayable + lost > 0 ? 1 : 0
    played[place] = Math.max(0, 1 - unplayable - lost)
    relieved[place] = Math.min(unplayable, 1 - lost)
    returned[place] = lost
  }
  isSpecial.fill(1, places.count)
  relieved.fill(1, places.count)
  if (!hasLocalRuleE5) {
    relieved.fill(0, OUT_OF_BOUNDS * places.count)
    returned.fill(1, OUT_OF_BOUNDS * places.count)
  }

  const reliefs = new Map<Outcome, Relief[]>()
  const cost = new Float64Array(size)
  const spot = new Int32Array(size)
  const stampOf = new Int32Array(size)
  let stamp = 1
  function refresh(outcome: Outcome, values: Float64Array): void {
    if (stampOf[outcome] === stamp) return
    let options = reliefs.get(outcome)
    if (!options) {
      options = reliefPlaces(
        places,
        pin,
        Math.floor(outcome / places.count),
        outcome % places.count,
        localRules,
      )
      reliefs.set(outcome, options)
    }
    let best = Number.POSITIVE_INFINITY
    let bestDrop = -1
    for (const { penaltyStrokes, places: drops } of options)
      for (const drop of drops) {
        const value = penaltyStrokes + (values[drop] as number)
        if (value >= best) continue
        best = value
        bestDrop = drop
      }
    cost[outcome] = best
    spot[outcome] = bestDrop
    stampOf[outcome] = stamp
  }
  return {
    isSpecial,
    played,
    relieved,
    returned,
    reliefCost(outcome, values) {
      refresh(outcome, values)
      return cost[outcome] as number
    },
    reliefPlace(outcome, values) {
      refresh(outcome, values)
      return spot[outcome] as number
    },
    valuesMoved() {
      stamp += 1
    },
  }
}
