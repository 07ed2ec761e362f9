import type { Lie } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { type ShortGamePlayer, shortGameValue } from '#golf/player/short-game-values.ts'

const STEP_METRES = 0.25
const MOST_METRES = 120

/** Expected strokes from a lie at a distance from the pin, on a level green; worked out once for each lie and distance. */
export function nearValues(player: ShortGamePlayer): (lie: Lie, metres: number) => number {
  const putting = puttingValues(player)
  const tables = new Map<Lie, Float64Array>()
  return (lie, metres) => {
    let table = tables.get(lie)
    if (table === undefined) {
      table = Float64Array.from({ length: MOST_METRES / STEP_METRES + 2 }, (_, step) =>
        lie === 'green'
          ? putting.expected(step * STEP_METRES)
          : shortGameValue(player, lie, step * STEP_METRES),
      )
      tables.set(lie, table)
    }
    const at = Math.min(MOST_METRES, Math.max(0, metres)) / STEP_METRES
    const below = Math.floor(at)
    const low = table[below] as number
    return low + (at - below) * ((table[below + 1] as number) - low)
  }
}
