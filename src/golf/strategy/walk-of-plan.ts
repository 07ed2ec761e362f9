import type { HoleModel } from './hole-model.ts'
import { outcomePlace } from './outcome.ts'
import { LEAST_REACH } from './settings.ts'
import { returnedShare } from './stroke-cost.ts'
import { takeWaiting } from './take-waiting.ts'

/** A stroke by what may become of its balls: outcomes with chances that add up to 1. */
export interface WalkedStroke {
  readonly outcome: ArrayLike<number>
  readonly weight: ArrayLike<number>
}

/** A place from which a full stroke is played: how often balls come to it, and how often it is played from there. */
export type Visit = (state: number, arrivals: number, strokes: number) => void

/**
 * Follows every ball of a hole from its first stroke until the short game, and tells of each place what comes to it: once
 * for every time it is walked through. A stroke that goes back is played again from where it was made, so a place has more
 * strokes than arrivals. What comes to a place with less than {@link LEAST_REACH} is left out. Returns how often the first
 * stroke is played.
 *
 * `strokeFrom`: the stroke that is played from a state, `null` where there is none. `values`: of all places, to tell which
 * relief is taken; `here`: that of the first stroke's place.
 */
export function walkOfPlan(
  { places, states, costs }: Pick<HoleModel, 'places' | 'states' | 'costs'>,
  values: Float64Array,
  first: WalkedStroke,
  here: number,
  strokeFrom: (state: number) => WalkedStroke | null,
  visit: Visit,
): number {
  const waiting = new Float64Array(places.coarseCount)

  function comeTo(place: number, chance: number): void {
    if (states.isState[place] === 1) waiting[place] = (waiting[place] as number) + chance
  }

  /** Sends balls on and returns how often the stroke is played for each that came. */
  function play({ outcome, weight }: WalkedStroke, share: number, value: number): number {
    let back = 0
    for (let at = 0; at < outcome.length; at++)
      if (costs.isSpecial[outcome[at] as number] === 1)
        back += (weight[at] as number) * returnedShare(costs, outcome[at] as number, values, value)
    if (back >= 1 - LEAST_REACH) return 1
    const times = 1 / (1 - back)
    for (let at = 0; at < outcome.length; at++) {
      const one = outcome[at] as number
      const chance = share * times * (weight[at] as number)
      if (costs.isSpecial[one] === 0) {
        comeTo(one, chance)
        continue
      }
      comeTo(outcomePlace(places, one), chance * (costs.played[one] as number))
      const drop = costs.drop[one] as number
      if (drop >= 0 && (costs.relief[one] as number) <= 1 + value)
        comeTo(drop, chance * (costs.relieved[one] as number))
    }
    return times
  }

  costs.valuesMoved()
  const tries = play(first, 1, here)
  takeWaiting(states.order, waiting, (state, share) => {
    const stroke = strokeFrom(state)
    if (stroke !== null) visit(state, share, share * play(stroke, share, values[state] as number))
  })
  return tries
}
