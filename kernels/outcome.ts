// What one outcome costs.
import {
  COST,
  BACK,
  KEPT,
  RELIEF,
  RELIEVED,
  RETURNED,
  PLAIN,
  address,
  figureAt,
} from './layout'

/** What an outcome costs a ball struck from where the value is `here`: the sum, and the share that goes back in `shareBack`. */
// @ts-ignore: decorator
@inline export function addOutcome(frame: usize, outcome: i32, chance: f32, here: f32): f32 {
  const relief = figureAt(address(frame + RELIEF), outcome)
  if (relief == PLAIN) return chance * figureAt(address(frame + COST), outcome)
  if (relief > <f32>1 + here) {
    shareBack +=
      chance * (figureAt(address(frame + RETURNED), outcome) + figureAt(address(frame + RELIEVED), outcome))
    return chance * figureAt(address(frame + KEPT), outcome)
  }
  shareBack += chance * figureAt(address(frame + BACK), outcome)
  return chance * figureAt(address(frame + COST), outcome)
}

export let shareBack: f32 = 0

/** Begins a new sum of what goes back. */
@inline export function clearBack(): void {
  shareBack = 0
}
