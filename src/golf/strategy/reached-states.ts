import type { HoleGround } from './hole-model.ts'
import { outcomePlace } from './outcome.ts'
import type { StrokeEnds } from './stroke-ends.ts'
import type { StrokeRow } from './stroke-rows.ts'
import { takeWaiting } from './take-waiting.ts'

/**
 * The states, nearest to the hole first, that balls come to from any of some strokes and the strokes after them, each
 * with a chance that matters. What other states cost hardly changes what the strokes cost: they are left as they are.
 *
 * `rowsFrom`: the strokes tried from a state. Each is followed as if it were the one that is played, so that none is
 * judged by values that were left behind. `values`: about what places cost, to tell which relief is taken.
 */
export function reachedStates(
  { places, states, costs }: Pick<HoleGround, 'places' | 'states' | 'costs'>,
  strokes: readonly StrokeEnds[],
  rowsFrom: (state: number) => readonly StrokeRow[],
  values: Float64Array,
): Int32Array {
  /** By place: the chance to come there that is not followed yet, and the greatest by one stroke of several. */
  const chance = new Float64Array(places.coarseCount)
  const byOne = new Float64Array(places.coarseCount)
  const isReached = new Uint8Array(places.coarseCount)

  function comeTo(place: number, share: number): void {
    if (states.isState[place] === 1) byOne[place] = (byOne[place] as number) + share
  }

  function end(outcome: number, share: number): void {
    const place = outcomePlace(places, outcome)
    if (costs.isSpecial[outcome] === 0) {
      comeTo(place, share)
      return
    }
    if (costs.isKnown[outcome] === 0) costs.workOut(outcome, values)
    comeTo(place, share * (costs.played[outcome] as number))
    const drop = costs.drop[outcome] as number
    if (drop >= 0) comeTo(drop, share * (costs.relieved[outcome] as number))
  }

  function follow(strokes: readonly Pick<StrokeRow, 'outcome' | 'weight'>[], share: number): void {
    const most = new Map<number, number>()
    for (const { outcome, weight } of strokes) {
      for (let at = 0; at < outcome.length; at++) end(outcome[at] as number, share * (weight[at] as number))
      for (const one of outcome)
        for (const place of [outcomePlace(places, one), costs.drop[one] as number]) {
          const came = byOne[place] ?? 0
          if (came === 0) continue
          most.set(place, Math.max(most.get(place) ?? 0, came))
          byOne[place] = 0
        }
    }
    for (const [place, came] of most) chance[place] = (chance[place] as number) + came
  }

  costs.valuesMoved()
  follow(strokes, 1)
  takeWaiting(states.order, chance, (state, share) => {
    isReached[state] = 1
    follow(rowsFrom(state), share)
  })
  return states.order.filter((state) => isReached[state] === 1)
}
