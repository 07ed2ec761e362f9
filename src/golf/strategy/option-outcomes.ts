import type { Ground } from '#golf/course/ground.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import { outcomeOfStrike, type Situation } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import { AT_REST, IN_RED, IN_YELLOW, outcomeKind, outcomePlace } from './outcome.ts'
import { groundOf } from './places.ts'
import type { OutcomeGround, PlanOption } from './plan.ts'
import type { ShotTable } from './shot-table.ts'

const OUTCOME_GROUNDS: readonly OutcomeGround[] = [
  'fairway',
  'first-cut',
  'rough',
  'heavy',
  'bunker',
  'trees',
  'scrub',
  'penalty',
  'out',
  'fringe',
  'green',
  'tee',
  'path',
]

/** Where the balls of one shot finish, by ground: shares that add up to 1. */
export function outcomeShares(
  model: HoleModel,
  table: ShotTable,
  situation: Situation,
): Record<OutcomeGround, number> {
  const shares = Object.fromEntries(OUTCOME_GROUNDS.map((ground) => [ground, 0])) as Record<
    OutcomeGround,
    number
  >
  for (let k = 0; k < table.weight.length; k++) {
    const ground = finishGround(model, outcomeOfStrike(model.places, table, situation, k))
    shares[ground] += table.weight[k] as number
  }
  return shares
}

/** What one shot leaves to the pin, metres: from the drop where relief was taken, from here again where it goes back. */
export function leaveOf(
  model: HoleModel,
  table: ShotTable,
  situation: Situation,
  values: Float64Array,
): PlanOption['leave_m'] {
  const { places, hole } = model
  const fromHere = Math.hypot(hole.pin[0] - situation.x, hole.pin[1] - situation.y)
  const leaves = new Float64Array(table.weight.length)
  for (let k = 0; k < leaves.length; k++) {
    const outcome = outcomeOfStrike(places, table, situation, k)
    const kind = outcomeKind(places, outcome)
    if (kind !== AT_REST) model.costs.workOut(outcome, values)
    const place = kind === AT_REST ? outcome : (model.costs.drop[outcome] as number)
    leaves[k] = place < 0 ? fromHere : (places.toPin[place] as number)
  }
  const at = (share: number): number => weightedQuantile(leaves, table.weight, share)
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) }
}

/** How far from the ball the middle good strike finishes, metres: where it crossed the edge when it went into a penalty area. */
export function middleTotal(model: HoleModel, table: ShotTable, situation: Situation): number {
  const { places } = model
  const totals = new Float64Array(table.goodCount)
  for (let k = 0; k < totals.length; k++) {
    const place = outcomePlace(places, outcomeOfStrike(places, table, situation, k))
    totals[k] = Math.hypot(
      (places.x[place] as number) - situation.x,
      (places.y[place] as number) - situation.y,
    )
  }
  return weightedQuantile(totals, new Float64Array(totals.length).fill(1), 0.5)
}

/** The ground where a ball finished, both penalty colours as one; out of bounds and penalty where it went in. */
export function finishGround(model: HoleModel, outcome: number): OutcomeGround {
  const { places } = model
  const kind = outcomeKind(places, outcome)
  if (kind === IN_RED || kind === IN_YELLOW) return 'penalty'
  return kind === AT_REST
    ? (groundOf(places, outcome) as Exclude<Ground, 'penalty-red' | 'penalty-yellow'>)
    : 'out'
}
