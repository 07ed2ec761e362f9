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
  /** By place: the chance to come there that is not followed yet, the greatest by one stroke of several, and by one. */
  const chance = new Float64Array(places.coarseCount)
  const most = new Float64Array(places.coarseCount)
  const byOne = new Float64Array(places.coarseCount)
  const isReached = new Uint8Array(places.coarseCount)
  /** Where balls come to by the present stroke, and by all of the state. */
  const ofOne = new Int32Array(places.coarseCount)
  const ofAll = new Int32Array(places.coarseCount)
  let countOfOne = 0

  function comeTo(place: number, share: number): void {
    if (share === 0 || states.isState[place] !== 1) return
    const before = byOne[place] as number
    if (before === 0) ofOne[countOfOne++] = place
    byOne[place] = before + share
  }

  function end(outcome: number, share: number): void {
    if (costs.isSpecial[outcome] === 0) {
      comeTo(outcome, share)
      return
    }
    if (costs.isKnown[outcome] === 0) costs.workOut(outcome, values)
    comeTo(outcomePlace(places, outcome), share * (costs.played[outcome] as number))
    const drop = costs.drop[outcome] as number
    if (drop >= 0) comeTo(drop, share * (costs.relieved[outcome] as number))
  }

  function follow(strokes: readonly Pick<StrokeRow, 'outcome' | 'weight'>[], share: number): void {
    let countOfAll = 0
    for (const { outcome, weight } of strokes) {
      countOfOne = 0
      for (let at = 0; at < outcome.length; at++) end(outcome[at] as number, share * (weight[at] as number))
      for (let at = 0; at < countOfOne; at++) {
        const place = ofOne[at] as number
        const [came, before] = [byOne[place] as number, most[place] as number]
        byOne[place] = 0
        if (before === 0) ofAll[countOfAll++] = place
        if (came > before) most[place] = came
      }
    }
    for (let at = 0; at < countOfAll; at++) {
      const place = ofAll[at] as number
      chance[place] = (chance[place] as number) + (most[place] as number)
      most[place] = 0
    }
  }

  costs.valuesMoved()
  follow(strokes, 1)
  takeWaiting(states.order, chance, (state, share) => {
    isReached[state] = 1
    follow(rowsFrom(state), share)
  })
  return states.order.filter((state) => isReached[state] === 1)
}
