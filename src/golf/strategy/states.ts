import type { Hole } from '#golf/course/hole.ts'
import { projectOnPolyline } from '#numbers/geometry/polyline.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Canopy } from './canopy.ts'
import { isHamperedAt } from './hampered.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { directionsOn } from './lines-of-play.ts'
import { groundOf, type Places } from './places.ts'
import { LINE_STEP_DEGREES, MOST_OFF_LINE_METRES } from './settings.ts'

/** The cells from which a full stroke is played. */
export interface States {
  /** Nearest to the hole first, by what is left along the hole line. */
  readonly order: Int32Array
  /** By cell: 1 for a state. */
  readonly isState: Uint8Array
  /** By cell: heading of the pin, and of the next bend (NaN on the last leg), radians. */
  readonly pinDirection: Float64Array
  readonly bendDirection: Float64Array
  /** By cell: 1 where trees or scrub are in the way of a stroke, so that low shots and lines to the side are tried too. */
  readonly isHampered: Uint8Array
  /** By cell: distance to the hole line, metres. */
  readonly offLine: Float64Array
}

/** Picks the states out of the places of a hole. */
export function statesOf(hole: Hole, places: Places, canopy: Canopy): States {
  const left = new Float64Array(places.coarseCount)
  const pinDirection = new Float64Array(places.coarseCount)
  const bendDirection = new Float64Array(places.coarseCount)
  const isHampered = new Uint8Array(places.coarseCount)
  const offLine = new Float64Array(places.coarseCount)
  const isState = new Uint8Array(places.coarseCount)
  const states: number[] = []
  for (let cell = 0; cell < places.coarseCount; cell++) {
    const x = places.x[cell] as number
    const y = places.y[cell] as number
    const { along, distance } = projectOnPolyline(hole.line, [x, y])
    offLine[cell] = distance
    const lie = lieOfGround(groundOf(places, cell))
    if (places.isShortGame[cell] === 1 || lie === null) continue
    left[cell] = Math.max(hole.lengthMetres - along + distance, places.toPin[cell] as number)
    const directions = directionsOn(hole, x, y)
    pinDirection[cell] = directions.pin
    bendDirection[cell] = directions.bend
    isHampered[cell] = isHamperedAt(canopy, canopy.fromCells, cell, lie, directions) ? 1 : 0
    states.push(cell)
    isState[cell] = 1
  }
  return {
    order: Int32Array.from(states.sort((a, b) => (left[a] as number) - (left[b] as number))),
    isState,
    pinDirection,
    bendDirection,
    isHampered,
    offLine,
  }
}

/**
 * Whether a line is played on this hole: the middle of its finishes lies near the hole line, or no further from it than
 * the ball does. Other holes and other people are beyond. A shot at the pin and past it always is: a player whose shortest
 * club is too long still has a stroke to play.
 */
export function isOnHole(
  ground: { readonly places: Places; readonly states: States },
  x: number,
  y: number,
  heading: number,
  total: number,
): boolean {
  const { coarse } = ground.places
  const cell = (atX: number, atY: number): number => rowOf(atY) * coarse.columns + columnOf(atX)
  const columnOf = (at: number): number => held((at - coarse.originX) / coarse.resolution, coarse.columns)
  const rowOf = (at: number): number => held((at - coarse.originY) / coarse.resolution, coarse.rows)
  const offAt = (atX: number, atY: number): number => ground.states.offLine[cell(atX, atY)] as number
  const off = offAt(x + total * Math.sin(heading), y + total * Math.cos(heading))
  return off <= MOST_OFF_LINE_METRES || off <= offAt(x, y) || isAtPin(ground, cell(x, y), heading, total)
}

/** Whether a shot from a cell is played at the pin or past it: on the nearest line that is tried, not the very direction. */
export function isAtPin(
  { places, states }: { readonly places: Places; readonly states: States },
  cell: number,
  heading: number,
  total: number,
): boolean {
  if (total < (places.toPin[cell] as number)) return false
  const offPin = heading - (states.pinDirection[cell] as number)
  return Math.cos(offPin) >= Math.cos(degreesToRadians(LINE_STEP_DEGREES / 2)) - 1e-12
}

function held(index: number, size: number): number {
  return Math.min(size - 1, Math.max(0, Math.round(index)))
}
