import type { Point } from '#numbers/geometry/point.ts'
import { AT_REST, outcomeKind, outcomePlace } from './outcome.ts'
import { type Places, placeAt } from './places.ts'
import type { StrokeEnds } from './stroke-ends.ts'

/**
 * Where the ball of one end lies: its run, which was followed from the middle of a cell, is laid on the exact landing. A ball
 * that was caught, or came down in a penalty area or out of bounds, lies where it came down.
 */
export function restPoint(places: Places, ends: StrokeEnds, end: number): Point {
  const outcome = ends.outcome[end] as number
  const [x, y] = [ends.x[end] as number, ends.y[end] as number]
  if (ends.isCaught[end] === 1 || outcomeKind(places, outcome) !== AT_REST) return [x, y]
  const [from, rest] = [placeAt(places, x, y), outcomePlace(places, outcome)]
  return [
    x + (places.x[rest] as number) - (places.x[from] as number),
    y + (places.y[rest] as number) - (places.y[from] as number),
  ]
}
