import type { HoleGround } from './hole-model.ts'
import { emptyPassage, passCrownsInto } from './pass-crowns.ts'
import { placeAt } from './places.ts'
import { type RestTable, restAt } from './rest-table.ts'
import { outcomeAt, type ShotTable } from './shot-table.ts'

/**
 * What may become of the balls of one stroke: an end for each strike that comes to its landing, and one for each place
 * where trees may catch it. Chances add up to 1.
 */
export interface StrokeEnds {
  readonly count: number
  /** Outcome numbers. */
  readonly outcome: Int32Array
  readonly weight: Float64Array
  /** Number of the strike in the shot's table. */
  readonly strike: Int32Array
  /** Where the ball came down, metres in the hole frame: its landing, or under the crown that caught it. */
  readonly x: Float64Array
  readonly y: Float64Array
  readonly isCaught: Uint8Array
}

/** The ends of a stroke from any point of the hole. */
export function strokeEnds(
  { places, canopy }: Pick<HoleGround, 'places' | 'canopy'>,
  table: ShotTable,
  x: number,
  y: number,
): StrokeEnds {
  const { dx, dy, paths } = table
  const rays = paths === null ? null : canopy.fromPoint(x, y)
  const outcome: number[] = []
  const weight: number[] = []
  const strike: number[] = []
  const atX: number[] = []
  const atY: number[] = []
  const isCaught: number[] = []
  const add = (k: number, share: number, chance: number, falls: RestTable | null): void => {
    const endX = x + share * (dx[k] as number)
    const endY = y + share * (dy[k] as number)
    const place = placeAt(places, endX, endY)
    outcome.push(falls === null ? outcomeAt(places, table, k, place) : restAt(places, falls, place))
    weight.push(chance)
    strike.push(k)
    atX.push(endX)
    atY.push(endY)
    isCaught.push(falls === null ? 0 : 1)
  }
  for (let k = 0; k < dx.length; k++) {
    const chance = table.weight[k] as number
    const ray = rays?.rayAt(0, rays.headingNumber(Math.atan2(dx[k] as number, dy[k] as number))) ?? 0
    const left =
      rays === null || paths === null || ray === 0
        ? 1
        : passCrownsInto(passage, canopy.crowns, rays, ray, paths, k)
    if (left > 0) add(k, 1, chance * left, null)
    if (left === 1 || paths === null) continue
    for (let piece = 0; piece < passage.count; piece++)
      add(
        k,
        passage.at[piece] as number,
        chance * (passage.chance[piece] as number),
        paths.falls[k] as RestTable,
      )
  }
  return {
    count: outcome.length,
    outcome: Int32Array.from(outcome),
    weight: Float64Array.from(weight),
    strike: Int32Array.from(strike),
    x: Float64Array.from(atX),
    y: Float64Array.from(atY),
    isCaught: Uint8Array.from(isCaught),
  }
}

const passage = emptyPassage()
