import { sampledSlopes } from '#golf/ball/sampled-slopes.ts'
import type { Day } from '#golf/course/day.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import { GROUND_CLASSES, type Ground, groundCode } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { ShortGamePlayer } from '#golf/player/short-game-values.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { AT_REST, outcomeOf } from '../outcome.ts'
import { outcomeCosts } from '../outcome-costs.ts'
import { groundOf, type Places, placeAt } from '../places.ts'
import { SLOPE_CELL_METRES } from '../settings.ts'
import { returnedShare } from '../stroke-cost.ts'
import { nearValues } from './near-values.ts'
import { groundNumbers } from './short-game-grounds.ts'
import { type EndCost, GREEN, type GreenAdditions, type ShortEnd, type ShortScene } from './short-scene.ts'

const FRINGE = groundCode('fringe')
const LEVEL: Point = [0, 0]

/**
 * The ground about the pin of a hole on a day, for one player. The green's slope holds on green and fringe; beyond them the
 * ground is taken as level. `nearGreen`: what putting on its slopes adds. `here`: what the ball is worth where it lies, for what must be replayed.
 */
export function holeScene(
  hole: Hole,
  places: Places,
  player: ShortGamePlayer,
  day: Pick<Day, 'greenSpeedFeet' | 'firmness'>,
  here: number,
  nearGreen: GreenAdditions | null,
): ShortScene {
  const surface = greenSurface(hole)
  // A plane is asked as quickly as a raster.
  const slopes =
    surface.source === 'level' || surface.source === 'mean-fall'
      ? surface
      : sampledSlopes(surface, hole.pin, furthestSlope(places), SLOPE_CELL_METRES)
  const worth = nearValues(player)
  const costs = outcomeCosts(places, hole.pin, hole.localRules)
  const values = Float64Array.from({ length: places.count }, (_, place) =>
    worth(lieOfGround(groundOf(places, place)) ?? 'rough', places.toPin[place] as number),
  )
  const codeAt = (x: number, y: number): number => places.ground[placeAt(places, x, y)] as number
  return {
    pin: hole.pin,
    here,
    codeAt,
    gradientAt: (x, y, code) => (code === GREEN || code === FRINGE ? slopes.gradientAt(x, y) : LEVEL),
    puttShares(x, y) {
      const place = placeAt(places, x, y)
      return [nearGreen?.one[place] ?? 0, nearGreen?.two[place] ?? 0]
    },
    ...groundNumbers(day),
    endCost(end: ShortEnd, x: number, y: number, code: number): EndCost {
      const place = placeAt(places, x, y)
      const outcome = outcomeOf(places, end, place)
      if (end === AT_REST && costs.isSpecial[outcome] === 0) {
        // The exact distance, not the cell's: a foot matters here.
        const lie = lieOfGround(GROUND_CLASSES[code] as Ground) ?? 'rough'
        const metres = Math.hypot(x - hole.pin[0], y - hole.pin[1])
        return { kept: worth(lie, metres) + (code === GREEN ? (nearGreen?.strokes[place] ?? 0) : 0), back: 0 }
      }
      const back = returnedShare(costs, outcome, values, here)
      const isReliefTaken = (costs.relief[outcome] as number) <= 1 + here
      return {
        kept: (costs.kept[outcome] as number) - (isReliefTaken ? 0 : (costs.reliefInKept[outcome] as number)),
        back,
      }
    },
  }
}

/** How far from the pin a slope is asked for, metres: the furthest green or fringe. */
function furthestSlope(places: Places): number {
  let furthest = 0
  for (let place = places.coarseCount; place < places.count; place++) {
    const code = places.ground[place]
    if (code === GREEN || code === FRINGE) furthest = Math.max(furthest, places.toPin[place] as number)
  }
  return furthest + 1
}
