import type { CrownRays } from './crown-rays.ts'
import type { HoleGround } from './hole-model.ts'
import { emptyPassage, passCrownsInto } from './pass-crowns.ts'
import { placeAt } from './places.ts'
import type { RestTable } from './rest-tables.ts'
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
  ground: Pick<HoleGround, 'places' | 'canopy'>,
  table: ShotTable,
  x: number,
  y: number,
): StrokeEnds {
  const rays = table.paths === null ? null : ground.canopy.fromPoint(x, y)
  const numberOf = (k: number): number =>
    (rays as CrownRays).headingNumber(Math.atan2(table.dx[k] as number, table.dy[k] as number))
  return endsAlong(ground, table, x, y, rays, 0, numberOf)
}

/** The ends of a stroke from the middle of a coarse cell, as the solve of a hole sees them. */
export function cellEnds(
  ground: Pick<HoleGround, 'places' | 'canopy'>,
  table: ShotTable,
  cell: number,
): StrokeEnds {
  const { places, canopy } = ground
  const numberOf = (k: number): number => table.paths?.cellHeading[k] as number
  const x = places.x[cell] as number
  const y = places.y[cell] as number
  return endsAlong(ground, table, x, y, table.paths === null ? null : canopy.fromCells, cell, numberOf)
}

const passage = emptyPassage()

function endsAlong(
  ground: Pick<HoleGround, 'places' | 'canopy'>,
  table: ShotTable,
  x: number,
  y: number,
  rays: CrownRays | null,
  slot: number,
  numberOf: (k: number) => number,
): StrokeEnds {
  const { places, canopy } = ground
  const { dx, dy, paths } = table
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
    outcome.push(falls === null ? outcomeAt(places, table, k, place) : (falls[place] as number))
    weight.push(chance)
    strike.push(k)
    atX.push(endX)
    atY.push(endY)
    isCaught.push(falls === null ? 0 : 1)
  }
  for (let k = 0; k < dx.length; k++) {
    const chance = table.weight[k] as number
    const ray = rays === null ? 0 : rays.rayAt(slot, numberOf(k))
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
