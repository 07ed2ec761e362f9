import type { Hole } from '#golf/course/hole.ts'
import { headingCrossings } from '#numbers/geometry/heading-crossings.ts'
import type { Candidate } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import type { HoleProblem } from './hole-problem.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { AT_REST, outcomeKind } from './outcome.ts'
import { groundOf } from './places.ts'
import type { NextShot } from './plan.ts'
import { playsToPin } from './plays-to-pin.ts'
import type { ShotTable } from './shot-table.ts'

/** A lie that fewer balls than this find is not worth a line of the plan. */
const LEAST_SHARE = 0.1
/** No more next shots than this: a page holds few facts. */
const MOST_NEXT_SHOTS = 2
/** A shot whose total ends this far short of the green is a layup, metres. */
const SHORT_OF_GREEN_METRES = 8

/** What to play next from the likeliest lies that a stroke leaves: the middle ball of each, by what it leaves. */
export function nextShots(model: HoleModel, problem: HoleProblem, { ends }: Candidate): NextShot[] {
  const { places } = model
  const byLie = new Map<string, { place: number; weight: number }[]>()
  for (let end = 0; end < ends.count; end++) {
    const outcome = ends.outcome[end] as number
    if (outcomeKind(places, outcome) !== AT_REST || places.isShortGame[outcome] === 1) continue
    const ground = groundOf(places, outcome)
    const balls = byLie.get(ground) ?? []
    byLie.set(ground, balls)
    balls.push({ place: outcome, weight: ends.weight[end] as number })
  }
  return [...byLie.values()]
    .map((balls) => ({ balls, share: balls.reduce((sum, ball) => sum + ball.weight, 0) }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((a, b) => b.share - a.share)
    .slice(0, MOST_NEXT_SHOTS)
    .flatMap(({ balls }) => nextFrom(model, problem, middleBall(model, balls)))
}

function middleBall(model: HoleModel, balls: readonly { place: number; weight: number }[]): number {
  const sorted = [...balls].sort(
    (a, b) => (model.places.toPin[a.place] as number) - (model.places.toPin[b.place] as number),
  )
  const half = sorted.reduce((sum, ball) => sum + ball.weight, 0) / 2
  let below = 0
  for (const ball of sorted) {
    below += ball.weight
    if (below >= half) return ball.place
  }
  return (sorted[0] as { place: number }).place
}

function nextFrom(model: HoleModel, problem: HoleProblem, place: number): NextShot[] {
  const table = problem.bestShot(place)
  const lie = lieOfGround(groundOf(model.places, place))
  if (!table || !lie) return []
  const from = { x_m: model.places.x[place] as number, y_m: model.places.y[place] as number }
  const { number, at } = numberFor(model.hole, from, table)
  const isLayup = number === 'layup'
  return [
    {
      from,
      lie,
      club: table.shot.club,
      shape: table.shot.shape,
      number,
      distance_m: isLayup ? null : at,
      plays_m: isLayup ? null : playsToPin(model, [from.x_m, from.y_m], at),
    },
  ]
}

/** The number of the green that the middle of a pattern's finishes is nearest to, with its distance in metres, or a layup when it is short of them all. */
function numberFor(
  hole: Hole,
  from: { readonly x_m: number; readonly y_m: number },
  table: ShotTable,
): { readonly number: NextShot['number']; readonly at: number } {
  const total = expectedTotal(table)
  const toPin = Math.atan2(hole.pin[0] - from.x_m, hole.pin[1] - from.y_m)
  const crossings = hole.green ? headingCrossings(hole.green, [from.x_m, from.y_m], toPin) : []
  const front = crossings[0] ?? Math.hypot(hole.pin[0] - from.x_m, hole.pin[1] - from.y_m)
  const back = crossings.at(-1) ?? front
  if (total < front - SHORT_OF_GREEN_METRES) return { number: 'layup', at: total }
  const numbers: { readonly number: NextShot['number']; readonly at: number }[] = [
    { number: 'front', at: front },
    { number: 'middle', at: (front + back) / 2 },
    { number: 'back', at: back },
  ]
  return numbers.reduce((nearest, one) =>
    Math.abs(one.at - total) < Math.abs(nearest.at - total) ? one : nearest,
  )
}

/** Stock carry as played today from this lie, with the stock run. */
function expectedTotal(table: ShotTable): number {
  const { stock } = table.shot
  let carry = 0
  for (let k = 0; k < table.goodCount; k++) carry += Math.hypot(table.dx[k] as number, table.dy[k] as number)
  return carry / table.goodCount + (stock.totalMetres - stock.carryMetres)
}
