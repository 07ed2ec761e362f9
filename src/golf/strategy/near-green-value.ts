import type { Ground } from '#golf/course/ground.ts'
import type { Lie } from '#golf/player/player.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import type { HoleModel } from './hole-model.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { groundOf, type Places, placeAt } from './places.ts'
import { FINE_CELL_METRES } from './settings.ts'

/**
 * Expected strokes to hole out from the very spot near the green: the short game by its own distance, with what the
 * nearest cell's value has besides distance.
 */
export function nearGreenValue(
  { places, player, hole }: HoleModel,
  values: Float64Array,
  spot: Point,
  ground: Ground,
  lie: Lie,
): number {
  const own = shortGameValue(player, lie, distance(spot, hole.pin))
  const surveyed = lieOfGround(ground)
  // What a green adds to a chip is not what it adds to a putt.
  if (surveyed === null || (lie === 'green') !== (surveyed === 'green')) return own
  const cell = nearestCell(places, spot, ground, FINE_CELL_METRES)
  if (cell < 0) return own
  return own + (values[cell] as number) - shortGameValue(player, surveyed, places.toPin[cell] as number)
}

/** The nearest place with a class of ground, two steps around a point; −1 where there is none. */
export function nearestCell(places: Places, [x, y]: Point, ground: Ground, step: number): number {
  let found = -1
  let least = Number.POSITIVE_INFINITY
  for (let column = -2; column <= 2; column++)
    for (let row = -2; row <= 2; row++) {
      const place = placeAt(places, x + column * step, y + row * step)
      const away = Math.hypot((places.x[place] as number) - x, (places.y[place] as number) - y)
      if (groundOf(places, place) !== ground || away >= least) continue
      least = away
      found = place
    }
  return found
}
