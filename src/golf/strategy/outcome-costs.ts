import type { Point } from '#numbers/geometry/point.ts'
import { OUT_OF_BOUNDS, OUTCOME_KINDS, type Outcome, outcomeKind, outcomePlace } from './outcome.ts'
import type { Places } from './places.ts'
import { type Relief, reliefPlaces } from './relief-places.ts'

/**
 * What each outcome costs from here on. Where it is not simply the value of a place, it is worked out from the values
 * of all places on demand, and kept until {@link OutcomeCosts.valuesMoved}. The arrays are open for the inner loops.
 */
export interface OutcomeCosts {
  /** 0 where an outcome simply costs the value of its place. */
  readonly isSpecial: Uint8Array
  /** Shares of an outcome that are played as they lie, that take relief, and that go back at once. */
  readonly played: Float64Array
  readonly relieved: Float64Array
  readonly returned: Float64Array
  /** 1 where the arrays below hold for the present values. */
  readonly isKnown: Uint8Array
  /** Expected cost of the shares that are played as they lie or take relief. */
  readonly kept: Float64Array
  /** Cheapest relief other than stroke and distance, penalty included; infinite when there is none, 0 where none is needed. */
  readonly relief: Float64Array
  /** The relief's part in {@link kept}. */
  readonly reliefInKept: Float64Array
  /** Where that relief is dropped, −1 when there is none. */
  readonly drop: Int32Array
  /** Fills the arrays above for one outcome. */
  workOut(outcome: Outcome, values: Float64Array): void
  /** Forget what was worked out from other values. */
  valuesMoved(): void
}

/** Sets out the outcomes of a hole: their shares depend on the ground, their costs on the values. */
export function outcomeCosts(places: Places, pin: Point, localRules: readonly string[]): OutcomeCosts {
  const size = places.count * OUTCOME_KINDS
  const shares = sharesOf(places, localRules.includes('E-5'))
  const { played, relieved } = shares
  const isKnown = new Uint8Array(size)
  const kept = new Float64Array(size)
  const relief = new Float64Array(size)
  const reliefInKept = new Float64Array(size)
  const drop = new Int32Array(size).fill(-1)
  const reliefs = new Map<Outcome, Relief[]>()
  const reliefsOf = (outcome: Outcome): Relief[] => {
    const known = reliefs.get(outcome)
    if (known) return known
    const kind = outcomeKind(places, outcome)
    const made = reliefPlaces(places, pin, kind, outcomePlace(places, outcome), localRules)
    reliefs.set(outcome, made)
    return made
  }
  return {
    ...shares,
    isKnown,
    kept,
    relief,
    reliefInKept,
    drop,
    workOut(outcome, values) {
      const share = relieved[outcome] as number
      let best = share > 0 ? Number.POSITIVE_INFINITY : 0
      let bestDrop = -1
      if (share > 0)
        for (const { penaltyStrokes, places: drops } of reliefsOf(outcome))
          for (const place of drops) {
            const cost = penaltyStrokes + (values[place] as number)
            if (cost >= best) continue
            best = cost
            bestDrop = place
          }
      relief[outcome] = best
      reliefInKept[outcome] = bestDrop < 0 ? 0 : share * best
      drop[outcome] = bestDrop
      const lies = played[outcome] as number
      const asItLies = lies > 0 ? lies * (values[outcomePlace(places, outcome)] as number) : 0
      kept[outcome] = asItLies + (reliefInKept[outcome] as number)
      isKnown[outcome] = 1
    },
    valuesMoved() {
      isKnown.fill(0)
    },
  }
}

function sharesOf(
  places: Places,
  hasLocalRuleE5: boolean,
): Pick<OutcomeCosts, 'isSpecial' | 'played' | 'relieved' | 'returned'> {
  const size = places.count * OUTCOME_KINDS
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
  return { isSpecial, played, relieved, returned }
}
