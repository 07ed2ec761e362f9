import { keptFlights } from '#golf/ball/kept-flights.ts'
import type { Hole } from '#golf/course/hole.ts'
import { type HoleGround, holeGround } from './hole-model.ts'
import { MOST_KEPT_TABLE_BYTES } from './settings.ts'

/**
 * Lays out grounds as {@link holeGround} does and keeps the last one, so that many players, or many lines, on one hole
 * need it once; flights are kept from one ground to the next. One whose tables have grown beyond `mostBytes` is laid out
 * anew: each player adds some.
 */
export function keptGround(
  mostBytes: number = MOST_KEPT_TABLE_BYTES,
): (hole: Hole, cellMetres?: number) => HoleGround {
  const flightsIn = keptFlights()
  let kept: { readonly key: string; readonly ground: HoleGround } | null = null
  return (hole, cellMetres) => {
    const key = JSON.stringify([hole, cellMetres ?? null])
    if (kept?.key !== key || kept.ground.tableBytes() > mostBytes) {
      // The old tables are let go of before new ones are made.
      kept = null
      kept = { key, ground: holeGround(hole, cellMetres, flightsIn) }
    }
    return kept.ground
  }
}
