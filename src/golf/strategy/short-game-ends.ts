import type { Lie, Player } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { lieOfGround } from './lie-of-ground.ts'
import type { NearGreenCorrections } from './near-green-corrections.ts'
import { groundOf, type Places } from './places.ts'

/** Distances at which the short game is worked out, metres apart; between them it is interpolated. */
const STEP_METRES = 0.25
/** Enough for a green cell anywhere on a hole. */
const TABLE_STEPS = 8000

/** Writes into `values` what a chip, a pitch or a putt costs from every place of the short game, on this green where it is known. */
export function shortGameEndsInto(
  values: Float64Array,
  places: Places,
  player: Player,
  nearGreen: NearGreenCorrections | null,
): void {
  const putting = puttingValues(player)
  const valueAt = (lie: Lie, metres: number): number =>
    lie === 'green' ? putting.expected(metres) : shortGameValue(player, lie, metres)
  const tables = new Map<Lie, Float64Array>()
  for (let place = 0; place < places.count; place++) {
    if (places.isShortGame[place] === 0) continue
    const lie = lieOfGround(groundOf(places, place))
    if (lie === null) continue
    const table = tables.get(lie) ?? new Float64Array(TABLE_STEPS).fill(Number.NaN)
    tables.set(lie, table)
    const at = (places.toPin[place] as number) / STEP_METRES
    const below = Math.floor(at)
    for (const step of [below, below + 1])
      if (Number.isNaN(table[step])) table[step] = valueAt(lie, step * STEP_METRES)
    const low = table[below] as number
    const high = table[below + 1] as number
    const flat = low + (at - below) * (high - low)
    values[place] = nearGreen === null ? flat : Math.max(1, flat + (nearGreen.strokes[place] as number))
  }
}
