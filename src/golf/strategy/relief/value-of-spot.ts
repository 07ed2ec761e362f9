import type { Ground } from '#golf/course/ground.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import type { Lie } from '#golf/player/player.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { evaluateStroke } from '../evaluate-stroke.ts'
import type { HoleModel } from '../hole-model.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { nearestCell, nearGreenValue } from '../near-green-value.ts'
import { COMPARE_LINE_STEP_DEGREES, COMPARE_QUADRATURE, SHORT_GAME_METRES } from '../settings.ts'
import type { HoleSolution } from '../solve-hole.ts'
import { strokeTries } from '../stroke-tries.ts'
import type { ReliefChoice } from './relief-choice.ts'

/** A place for the ball and what the hole costs from there. */
export interface ValuedSpot {
  readonly spot: Point
  readonly ground: Ground
  readonly lie: Lie
  readonly strokes: number
}

/** Spots of one option that are worked out exactly: the best by the values of the cells, of every class of ground at least one. Our assumption. */
const MOST_TRIED = 3

/**
 * The spot of a choice that costs fewest strokes, worked out from the very place with its lie. `null` where none can be
 * valued.
 */
export function bestSpot(model: HoleModel, solved: HoleSolution, choice: ReliefChoice): ValuedSpot | null {
  const groundOfPoint = groundReader(model.hole)
  const known = choice.spots.map((spot) => {
    const ground = groundOfPoint(spot)
    return {
      spot,
      ground,
      lie: choice.lie ?? lieOfGround(ground),
      guess: cellValue(model, solved, spot, ground),
    }
  })
  const tried = worthTrying(known).flatMap(({ spot, ground, lie }) =>
    lie === null ? [] : [{ spot, ground, lie, strokes: valueFrom(model, solved, { spot, ground }, lie) }],
  )
  return tried.reduce<ValuedSpot | null>(
    (best, one) => (best && best.strokes <= one.strokes ? best : one),
    null,
  )
}

/** Expected strokes to hole out from a place and lie with the best plan. */
function valueFrom(
  model: HoleModel,
  solved: HoleSolution,
  { spot, ground }: Pick<KnownSpot, 'spot' | 'ground'>,
  lie: Lie,
): number {
  if (lie === 'green' || distance(spot, model.hole.pin) <= SHORT_GAME_METRES)
    return nearGreenValue(model, solved.values, spot, ground, lie)
  const situation = { x: spot[0], y: spot[1], lie }
  return evaluateStroke(model, solved.values, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, solved.problem.shots, situation, COMPARE_LINE_STEP_DEGREES),
  }).value
}

interface KnownSpot {
  readonly spot: Point
  readonly ground: Ground
  readonly lie: Lie | null
  readonly guess: number
}

/** The few best by the cells' values, and the best of each class of ground. */
function worthTrying(known: readonly KnownSpot[]): KnownSpot[] {
  const sorted = [...known].sort((a, b) => a.guess - b.guess)
  const chosen = sorted.slice(0, MOST_TRIED)
  for (const one of sorted) if (!chosen.some(({ ground }) => ground === one.ground)) chosen.push(one)
  return chosen
}

/** The value of the nearest cell of the same ground: the cell of the spot itself may have another. */
function cellValue({ places }: HoleModel, { values }: HoleSolution, spot: Point, ground: Ground): number {
  const cell = nearestCell(places, spot, ground, places.coarse.resolution)
  return cell < 0 ? Number.POSITIVE_INFINITY : (values[cell] as number)
}
