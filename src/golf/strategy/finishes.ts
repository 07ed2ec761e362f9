import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie, Player, Sit } from '#golf/player/player.ts'
import { LEVEL_STANCE, type Stance, type StanceEffect, stanceEffect } from '#golf/player/stance.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { type Situation, tableFor } from './evaluate-stroke.ts'
import { type HoleGround, type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { finishGround } from './option-outcomes.ts'
import { AT_REST, outcomeKind } from './outcome.ts'
import type { OutcomeGround } from './plan.ts'
import { STROKE_QUADRATURE } from './settings.ts'
import { type Shot, type ShotShape, shotsOf } from './shots.ts'
import { strikesOf } from './strikes.ts'
import { strokeEnds } from './stroke-ends.ts'

/** Where the balls of one shot come to rest, or come down in a penalty area or out of bounds; weights add up to 1. */
export interface Finishes {
  readonly x: Float64Array
  readonly y: Float64Array
  readonly weight: Float64Array
  readonly ground: readonly OutcomeGround[]
}

export interface FinishesQuestion {
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  readonly club: string
  /** How it is swung; absent = the stock shot. */
  readonly shape?: ShotShape
  /** Direction of the pattern's centre, wind included, degrees clockwise from the y axis: a plan's `aim.heading_deg`. */
  readonly headingDegrees: number
  readonly from?: readonly [x: number, y: number]
  readonly lie?: Lie
  readonly sit?: Sit | undefined
  readonly stance?: Stance | undefined
  /** The hole's ground laid out before, to save the time: one picture asks for many lines of one hole. */
  readonly ground?: HoleGround
}

/** Lays a club's pattern on a hole along a line. Throws a RangeError for a shot the player does not have. */
export function finishesOf(question: FinishesQuestion): Finishes {
  const { hole, player, day } = question
  // Where balls finish asks no value, so the green's putts need not be rolled.
  const model = holeModel(question.ground ?? holeGround(hole), player, day, undefined, null)
  const shape = question.shape ?? 'stock'
  const shot = shotsOf(player).find((one) => one.club === question.club && one.shape === shape)
  if (!shot) throw new RangeError(`the player has no ${question.club} (${shape})`)
  const [x, y] = question.from ?? [0, 0]
  const { sit, stance } = question
  const situation: Situation = { x, y, lie: question.lie ?? 'tee', sit, stance }
  const slope = stance ? stanceEffect(stance, shot.loftDegrees, player.hand) : LEVEL_STANCE
  const table = tableFor(
    model,
    situation,
    shot,
    calmHeading(model, shot, degreesToRadians(question.headingDegrees), slope),
    strikesOf(STROKE_QUADRATURE),
  )
  const ends = strokeEnds(model, table, x, y)
  const { count } = ends
  const finishes = {
    x: new Float64Array(count),
    y: new Float64Array(count),
    weight: ends.weight,
    ground: new Array<OutcomeGround>(count),
  }
  for (let k = 0; k < count; k++) {
    const outcome = ends.outcome[k] as number
    const landingX = ends.x[k] as number
    const landingY = ends.y[k] as number
    const hasRun = ends.isCaught[k] === 0 && outcomeKind(model.places, outcome) === AT_REST
    // The cell's middle would draw balls in rows: the run found is laid on the exact landing instead.
    const run = hasRun ? runFrom(model, landingX, landingY, outcome) : [0, 0]
    finishes.x[k] = landingX + (run[0] as number)
    finishes.y[k] = landingY + (run[1] as number)
    finishes.ground[k] = finishGround(model, outcome)
  }
  return finishes
}

/** The heading without wind and slope whose pattern the wind and the slope under the feet carry to this one. */
export function calmHeading(
  model: Pick<HoleModel, 'flights'>,
  shot: Shot,
  centre: number,
  slope: StanceEffect = LEVEL_STANCE,
): number {
  let heading = centre
  for (let round = 0; round < 20; round++) {
    const { carryMetres } = shot.stock
    const change = model.flights.changeFor(shot.loftDegrees, carryMetres, heading, slope.launch)
    heading = centre - slope.turn - Math.atan2(change.driftShare, change.carryShare)
  }
  return heading
}

function runFrom(model: HoleGround, landingX: number, landingY: number, rest: number): [number, number] {
  const { places } = model
  const { resolution } = places.coarse
  const dx = (places.x[rest] as number) - landingX
  const dy = (places.y[rest] as number) - landingY
  return Math.hypot(dx, dy) < resolution ? [0, 0] : [dx, dy]
}
