import { GRAVITY } from '#golf/ball/flight-settings.ts'
import { ROLLING_SHARE } from '#golf/ball/green-settings.ts'
import { greenSlowing } from '#golf/ball/green-slowing.ts'
import { RUN_SHARES } from '#golf/ball/surface-settings.ts'
import { type GroundToday, runShare, type Surface } from '#golf/ball/turf.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { GreenSurface } from '#golf/course/green-surface.ts'
import { GROUND_CLASSES, groundCode } from '#golf/course/ground.ts'
import { AT_REST, IN_RED, IN_YELLOW, OUT_OF_BOUNDS, outcomeOf } from './outcome.ts'
import { type Places, placeAt } from './places.ts'
import { LONGEST_CROSSING_METRES, RUN_STEP_METRES } from './settings.ts'

const OUT = groundCode('out')
const RED = groundCode('penalty-red')
const YELLOW = groundCode('penalty-yellow')
const GREEN = groundCode('green')

/** The ground of a hole as a running ball meets it. */
export interface RunGround {
  readonly places: Places
  readonly isGreenSloped: boolean
  /** By number of the place on the green: rise per metre towards +x and towards +y. */
  readonly riseX: Float64Array
  readonly riseY: Float64Array
  /** By code of the ground: run on it as a share of the run on a level fairway of the same day. */
  readonly shares: Float64Array
}

/** The ground of a hole with its rough as the day says. */
export function runGround(places: Places, green: GreenSurface, rough: GroundToday['rough']): RunGround {
  const shares = Float64Array.from(GROUND_CLASSES, (ground) =>
    ground in RUN_SHARES ? runShare(ground as Surface, rough) : 0,
  )
  const isGreenSloped = green.source !== 'level'
  const rises = Array.from(places.greenPlaces, (place) =>
    isGreenSloped ? green.gradientAt(places.x[place] as number, places.y[place] as number) : [0, 0],
  )
  return {
    places,
    isGreenSloped,
    riseX: Float64Array.from(rises, ([riseX]) => riseX as number),
    riseY: Float64Array.from(rises, ([, riseY]) => riseY as number),
    shares,
  }
}

/** A direction in which balls run, and where steps along it lead from the middle of a coarse cell. */
export interface RunWay {
  readonly heading: number
  readonly stepMetres: number
  /** One step, metres. */
  readonly dx: number
  readonly dy: number
  /** By number of steps: coarse cells to the right and on. */
  readonly columns: Int16Array
  readonly rows: Int16Array
}

/** A way for runs of up to so many steps along a heading; further ones are followed without its cells. */
export function runWay({ coarse }: Places, heading: number, stepMetres: number, steps: number): RunWay {
  const [dx, dy] = [stepMetres * Math.sin(heading), stepMetres * Math.cos(heading)]
  const cells = (metres: number): Int16Array =>
    Int16Array.from({ length: steps + 1 }, (_, step) => Math.round((step * metres) / coarse.resolution))
  return { heading, stepMetres, dx, dy, columns: cells(dx), rows: cells(dy) }
}

/**
 * Follows runs of 0 to `most` steps from one landing, which all lead through the same places: `rests[n]` is what becomes of
 * a ball with a run of `n` steps. Each ground uses a run up at its own rate; a penalty area or the boundary ends it. A run
 * is that on a level fairway, or, for a ball that lands on the green, its run there; `isBack`: against the way's heading. A
 * ball that runs on to a green from outside is slowed and sped up by its slope as one that rolls.
 */
export function restsAlong(
  ground: RunGround,
  landing: number,
  way: RunWay,
  isBack: boolean,
  most: number,
  rests: Int32Array,
): void {
  const { places, shares } = ground
  const { columns, rows } = places.coarse
  let place = landing
  let code = places.ground[place] as number
  const [fromX, fromY] = [places.x[landing] as number, places.y[landing] as number]
  if (code === OUT || code === RED || code === YELLOW) {
    rests.fill(outcomeOf(places, kindOf(code), crossingPlace(places, fromX, fromY, way.heading)), 0, most + 1)
    return
  }
  const [dx, dy] = isBack ? [-way.dx, -way.dy] : [way.dx, way.dy]
  // The run of a ball that lands on the green is what it is on the slope there.
  const hasLandedOnGreen = code === GREEN
  const ownShare = hasLandedOnGreen ? (shares[GREEN] as number) : 1
  // From coarse cells all runs lead through the same cells beside them, until one comes near the pin.
  let known =
    isBack || landing >= places.coarseCount || places.isNearPin[landing] === 1 ? 0 : way.columns.length
  const row = Math.floor(landing / columns)
  const column = landing - row * columns
  let used = 0
  let steps = 0
  // Half a step more than the run, so that a run is rounded to whole steps and not cut down to them.
  let run = 0.5 / ownShare
  for (let step = 1; ; step++) {
    let share = shares[code] as number
    if (share === 0) break
    if (code === GREEN && !hasLandedOnGreen)
      share *= rollShare(ground, place, dx / way.stepMetres, dy / way.stepMetres)
    used += 1 / share
    while (run < used) {
      rests[steps] = outcomeOf(places, AT_REST, place)
      steps += 1
      if (steps > most) return
      run = (steps + 0.5) / ownShare
    }
    let next = -1
    if (step < known) {
      const toColumn = column + (way.columns[step] as number)
      const toRow = row + (way.rows[step] as number)
      next =
        (toRow < 0 ? 0 : toRow >= rows ? rows - 1 : toRow) * columns +
        (toColumn < 0 ? 0 : toColumn >= columns ? columns - 1 : toColumn)
      if (places.isNearPin[next] === 1) known = 0
    }
    if (step >= known) next = placeAt(places, fromX + step * dx, fromY + step * dy)
    code = places.ground[next] as number
    if (code === OUT || code === RED || code === YELLOW) {
      rests.fill(outcomeOf(places, kindOf(code), place), steps, most + 1)
      return
    }
    place = next
  }
  rests.fill(outcomeOf(places, AT_REST, place), steps, most + 1)
}

/** How far a ball rolls on the green at a place, along a direction of length 1, as a share of the same roll on the level. */
export function rollShare(ground: RunGround, place: number, alongX: number, alongY: number): number {
  if (!ground.isGreenSloped) return 1
  const index = ground.places.greenIndex[place] as number
  const grade = (ground.riseX[index] as number) * alongX + (ground.riseY[index] as number) * alongY
  const pull = (ROLLING_SHARE * GRAVITY * grade) / greenSlowing(REFERENCE_DAY.greenSpeedFeet)
  return 1 / Math.min(1 / LEAST_ROLL_SHARE, Math.max(LEAST_ROLL_SHARE, 1 + pull))
}

/** A slope of the green at most doubles or halves what is left of a run. Our assumption. */
const LEAST_ROLL_SHARE = 0.5

/** The last place outside the penalty area (or boundary) on the way back along the ball's own path; the landing itself when there is none. */
export function crossingPlace(places: Places, x: number, y: number, heading: number): number {
  const dx = RUN_STEP_METRES * Math.sin(heading)
  const dy = RUN_STEP_METRES * Math.cos(heading)
  for (let back = 1; back * RUN_STEP_METRES <= LONGEST_CROSSING_METRES; back++) {
    const place = placeAt(places, x - back * dx, y - back * dy)
    const code = places.ground[place] as number
    if (code !== OUT && code !== RED && code !== YELLOW) return place
  }
  return placeAt(places, x, y)
}

/** How a ball ended in the ground of a code that ends runs. */
export function kindOf(code: number): number {
  return code === RED ? IN_RED : code === YELLOW ? IN_YELLOW : OUT_OF_BOUNDS
}
