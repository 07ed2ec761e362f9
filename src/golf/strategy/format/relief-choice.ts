import type { HoleModel } from '../hole-model.ts'
import { outcomeKind, outcomePlace } from '../outcome.ts'
import { type Relief, reliefPlaces } from '../relief-places.ts'

/** The best drop after a stroke: what it is worth, where it lies, and its penalty strokes; `place` −1 where there is none. */
export interface BestDrop {
  readonly worth: number
  readonly place: number
  readonly penalty: number
}

const NO_DROP: BestDrop = { worth: Number.NEGATIVE_INFINITY, place: -1, penalty: 0 }

/** The drops of a hole, found once and weighed by what a place is worth after so many strokes. */
export interface ReliefChoice {
  /** The best drop of an outcome after a stroke that makes `used` strokes; `worthAt(used, place)` prices it. */
  best(outcome: number, used: number, worthAt: (used: number, place: number) => number): BestDrop
}

/** Keeps the drops of every outcome asked about, and the best of them after each number of strokes. */
export function reliefChoice(model: HoleModel): ReliefChoice {
  const { places, hole } = model
  const drops = new Map<number, readonly Relief[]>()
  const known: Map<number, BestDrop>[] = []
  const dropsOf = (outcome: number): readonly Relief[] => {
    const made =
      drops.get(outcome) ??
      reliefPlaces(
        places,
        hole.pin,
        outcomeKind(places, outcome),
        outcomePlace(places, outcome),
        hole.localRules,
      )
    drops.set(outcome, made)
    return made
  }
  return {
    best(outcome, used, worthAt) {
      const level = known[used] ?? new Map<number, BestDrop>()
      known[used] = level
      const before = level.get(outcome)
      if (before) return before
      let best = NO_DROP
      for (const { penaltyStrokes, places: at } of dropsOf(outcome))
        for (const place of at) {
          const worth = worthAt(used + penaltyStrokes, place)
          if (worth > best.worth) best = { worth, place, penalty: penaltyStrokes }
        }
      level.set(outcome, best)
      return best
    },
  }
}
