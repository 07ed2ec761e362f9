import { LEAST_REACH } from './settings.ts'

/**
 * Takes what waits at each state, furthest from the hole first, again and again until less than {@link LEAST_REACH} waits
 * at any. `waiting`: by place, how many balls; what is taken may put others there. `order`: states, nearest first.
 */
export function takeWaiting(
  order: Int32Array,
  waiting: Float64Array,
  take: (state: number, share: number) => void,
): void {
  for (let isMore = true; isMore; ) {
    isMore = false
    for (let index = order.length - 1; index >= 0; index--) {
      const state = order[index] as number
      const share = waiting[state] as number
      if (share < LEAST_REACH) continue
      waiting[state] = 0
      isMore = true
      take(state, share)
    }
  }
}
