import type { Ground } from '#golf/course/ground.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import type { Lie } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { evaluateStroke } from '../evaluate-stroke.ts'
import type { HoleModel } from '../hole-model.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { groundOf, placeAt } from '../places.ts'
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
    lie === null ? [] : [{ spot, ground, lie, strokes: valueFrom(model, solved, spot, lie) }],
  )
  return tried.reduce<ValuedSpot | null>(
    (best, one) => (best && best.strokes <= one.strokes ? best : one),
    null,
  )
}

/** Expected strokes to hole out from a place and lie with the best plan. */
function valueFrom(model: HoleModel, { problem, values }: HoleSolution, spot: Point, lie: Lie): number {
  const toPin = distance(spot, model.hole.pin)
  if (lie === 'green') return puttingValues(model.player).expected(toPin)
  if (toPin <= SHORT_GAME_METRES) return shortGameValue(model.player, lie, toPin)
  const situation = { x: spot[0], y: spot[1], lie }
  return evaluateStroke(model, values, {
    situation,
    quadrature: COMPARE_QUADRATURE,
    tries: strokeTries(model, problem.shots, situation, COMPARE_LINE_STEP_DEGREES),
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
function cellValue(model: HoleModel, { values }: HoleSolution, [x, y]: Point, ground: Ground): number {
  const { places } = model
  const step = places.coarse.resolution
  let best = Number.POSITIVE_INFINITY
  let nearest = Number.POSITIVE_INFINITY
  for (let column = -2; column <= 2; column++)
    for (let row = -2; row <= 2; row++) {
      const place = placeAt(places, x + column * step, y + row * step)
      const away = Math.hypot((places.x[place] as number) - x, (places.y[place] as number) - y)
      if (groundOf(places, place) !== ground || away >= nearest) continue
      nearest = away
      best = values[place] as number
    }
  return best
}
