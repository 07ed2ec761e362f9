import type { Hole } from '#golf/course/hole.ts'
import { projectOnPolyline } from '#numbers/geometry/polyline.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { directionsOn } from './lines-of-play.ts'
import { groundOf, type Places } from './places.ts'

/** The cells from which a full stroke is played. */
export interface States {
  /** Nearest to the hole first, by what is left along the hole line. */
  readonly order: Int32Array
  /** By cell: heading of the pin, and of the next bend (NaN on the last leg), radians. */
  readonly pinDirection: Float64Array
  readonly bendDirection: Float64Array
}

/** Picks the states out of the places of a hole. */
export function statesOf(hole: Hole, places: Places): States {
  const left = new Float64Array(places.coarseCount)
  const pinDirection = new Float64Array(places.coarseCount)
  const bendDirection = new Float64Array(places.coarseCount)
  const states: number[] = []
  for (let cell = 0; cell < places.coarseCount; cell++) {
    if (places.isShortGame[cell] === 1 || lieOfGround(groundOf(places, cell)) === null) continue
    const x = places.x[cell] as number
    const y = places.y[cell] as number
    const { along, distance } = projectOnPolyline(hole.line, [x, y])
    left[cell] = Math.max(hole.lengthMetres - along + distance, places.toPin[cell] as number)
    const directions = directionsOn(hole, x, y)
    pinDirection[cell] = directions.pin
    bendDirection[cell] = directions.bend
    states.push(cell)
  }
  return {
    order: Int32Array.from(states.sort((a, b) => (left[a] as number) - (left[b] as number))),
    pinDirection,
    bendDirection,
  }
}
