import type { Candidate } from './evaluate-stroke.ts'
import { greenNumbers, numberOfTotal } from './green-numbers.ts'
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

/** The plan after a stroke: the best shot of every place from which a full stroke is played. */
export type PlanAfter = Pick<HoleProblem, 'bestShot'>

/** What to play next from the likeliest lies that a stroke leaves: the middle ball of each, by what it leaves. */
export function nextShots(model: HoleModel, plan: PlanAfter, { ends }: Candidate): NextShot[] {
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
    .flatMap(({ balls }) => nextFrom(model, plan, middleBall(model, balls)))
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

function nextFrom(model: HoleModel, plan: PlanAfter, place: number): NextShot[] {
  const table = plan.bestShot(place)
  const lie = lieOfGround(groundOf(model.places, place))
  if (!table || !lie) return []
  const from = { x_m: model.places.x[place] as number, y_m: model.places.y[place] as number }
  const numbers = greenNumbers(model.hole, [from.x_m, from.y_m])
  const number = numberOfTotal(numbers, expectedTotal(table))
  const at = number === 'layup' ? null : numbers[number]
  return [
    {
      from,
      lie,
      club: table.shot.club,
      shape: table.shot.shape,
      number,
      distance_m: at,
      plays_m: at === null ? null : playsToPin(model, [from.x_m, from.y_m], at),
    },
  ]
}

/** Stock carry as played today from this lie, with the stock run. */
function expectedTotal(table: ShotTable): number {
  const { stock } = table.shot
  let carry = 0
  for (let k = 0; k < table.goodCount; k++) carry += Math.hypot(table.dx[k] as number, table.dy[k] as number)
  return carry / table.goodCount + (stock.totalMetres - stock.carryMetres)
}
