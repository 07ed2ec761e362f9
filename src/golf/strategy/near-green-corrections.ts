import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { sampledSlopes } from '#golf/ball/sampled-slopes.ts'
import type { Day } from '#golf/course/day.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import type { Hole } from '#golf/course/hole.ts'
import { greenPutting, greenRolls } from '#golf/player/green-putting.ts'
import type { Player } from '#golf/player/player.ts'
import { groundOf, type Places } from './places.ts'
import { APRON_METRES, SLOPE_CELL_METRES } from './settings.ts'
import { offGreenStrokes } from './short/off-green-strokes.ts'

/**
 * What this green adds to the short game's values, which know only lie and distance: by place, 0 where it adds nothing.
 * Worked out once for a hole, a player and a day; what is like it (other draws of the player, other wind) keeps it.
 */
export interface NearGreenCorrections {
  /** Strokes to add to the value. */
  readonly strokes: Float64Array
  /** To add to the chances of one and of two strokes; only for putts, since a chip's follow from its value. */
  readonly one: Float64Array
  readonly two: Float64Array
}

/**
 * Corrections of a hole's green for a player on a day; `null` when the green is level and adds nothing. They take longer
 * than a person waits: `lookUp` is called all the while, and what it throws ends the work.
 */
export function nearGreenCorrections(
  hole: Hole,
  places: Places,
  player: Player,
  day: Day,
  lookUp?: () => void,
): NearGreenCorrections | null {
  const surface = greenSurface(hole)
  if (surface.source === 'level') return null
  const onGreen: number[] = []
  let reachMetres = 0
  for (let place = 0; place < places.count; place++) {
    if (groundOf(places, place) !== 'green') continue
    onGreen.push(place)
    reachMetres = Math.max(reachMetres, places.toPin[place] as number)
  }
  if (onGreen.length === 0) return null
  // A plane is asked as quickly as a raster.
  const slopes =
    surface.source === 'mean-fall'
      ? surface
      : sampledSlopes(surface, hole.pin, reachMetres + APRON_METRES, SLOPE_CELL_METRES)
  const slowing = greenSlowing(day.greenSpeedFeet)
  const putting = greenPutting(player, greenRolls({ slopes, hole: hole.pin, slowing, reachMetres, lookUp }))
  const corrections: NearGreenCorrections = {
    strokes: new Float64Array(places.count),
    one: new Float64Array(places.count),
    two: new Float64Array(places.count),
  }
  for (const place of onGreen) {
    const [x, y] = [places.x[place] as number, places.y[place] as number]
    const [one, two] = putting.sharesAt(x, y)
    corrections.strokes[place] = putting.strokesAt(x, y)
    corrections.one[place] = one
    corrections.two[place] = two
  }
  const offGreen = offGreenStrokes(hole, places, player, day, corrections, lookUp)
  for (let place = 0; place < places.count; place++)
    if (offGreen[place] !== 0) corrections.strokes[place] = offGreen[place] as number
  return corrections
}
