import { groundCode } from '#golf/course/ground.ts'
import { AT_REST, type Outcome, outcomeOf } from './outcome.ts'
import { placeAt } from './places.ts'
import { crossingPlace, kindOf, type RunGround, type RunWay, rollShare } from './rests-along.ts'

const OUT = groundCode('out')
const RED = groundCode('penalty-red')
const YELLOW = groundCode('penalty-yellow')
const GREEN = groundCode('green')

/**
 * Follows one run by itself and step by step, slowly and plainly, to hold the tables against: each ground uses it up at its
 * own rate; a penalty area or the boundary ends it.
 * `runMetres` is the run on a level fairway, or, for a ball that lands on the green, its run there; negative is back
 * against the way's heading. The run is rounded to whole steps. A ball that runs on to a green from outside is slowed and
 * sped up by its slope as one that rolls.
 */
export function oneRun(
  ground: RunGround,
  landing: number,
  runMetres: number,
  way: Pick<RunWay, 'heading' | 'stepMetres'>,
): Outcome {
  const { places, shares } = ground
  let place = landing
  let code = places.ground[place] as number
  const [fromX, fromY] = [places.x[landing] as number, places.y[landing] as number]
  if (code === OUT || code === RED || code === YELLOW)
    return outcomeOf(places, kindOf(code), crossingPlace(places, fromX, fromY, way.heading))
  const isBack = runMetres < 0
  const [sin, cos] = [Math.sin(way.heading), Math.cos(way.heading)]
  const [dx, dy] = isBack
    ? [-way.stepMetres * sin, -way.stepMetres * cos]
    : [way.stepMetres * sin, way.stepMetres * cos]
  // The run of a ball that lands on the green is what it is on the slope there.
  const hasLandedOnGreen = code === GREEN
  const ownShare = hasLandedOnGreen ? (shares[GREEN] as number) : 1
  // Half a step more than the run, so that a run is rounded to whole steps and not cut down to them.
  const run = (Math.round(Math.abs(runMetres) / way.stepMetres) + 0.5) / ownShare
  let used = 0
  for (let step = 1; ; step++) {
    let share = shares[code] as number
    if (share === 0) break
    if (code === GREEN && !hasLandedOnGreen)
      share *= rollShare(ground, place, dx / way.stepMetres, dy / way.stepMetres)
    used += 1 / share
    if (run < used) break
    const next = placeAt(places, fromX + step * dx, fromY + step * dy)
    code = places.ground[next] as number
    if (code === OUT || code === RED || code === YELLOW) return outcomeOf(places, kindOf(code), place)
    place = next
  }
  return outcomeOf(places, AT_REST, place)
}
