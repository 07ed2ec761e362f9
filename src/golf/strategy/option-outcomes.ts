import type { Ground } from '#golf/course/ground.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import type { Situation } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import { AT_REST, IN_RED, IN_YELLOW, outcomeKind, outcomePlace } from './outcome.ts'
import { groundOf } from './places.ts'
import type { OutcomeGround, PlanOption } from './plan.ts'
import type { ShotTable } from './shot-table.ts'
import type { StrokeEnds } from './stroke-ends.ts'

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
export function outcomeShares(model: HoleModel, ends: StrokeEnds): Record<OutcomeGround, number> {
  const shares = Object.fromEntries(OUTCOME_GROUNDS.map((ground) => [ground, 0])) as Record<
    OutcomeGround,
    number
  >
  for (let end = 0; end < ends.count; end++)
    shares[finishGround(model, ends.outcome[end] as number)] += ends.weight[end] as number
  return shares
}

/** What one shot leaves to the pin, metres: from the drop where relief was taken, from here again where it goes back. */
export function leaveOf(
  model: HoleModel,
  ends: StrokeEnds,
  situation: Situation,
  values: Float64Array,
): PlanOption['leave_m'] {
  const { places, hole } = model
  const fromHere = Math.hypot(hole.pin[0] - situation.x, hole.pin[1] - situation.y)
  const leaves = new Float64Array(ends.count)
  for (let end = 0; end < ends.count; end++) {
    const outcome = ends.outcome[end] as number
    const kind = outcomeKind(places, outcome)
    if (kind !== AT_REST) model.costs.workOut(outcome, values)
    const place = kind === AT_REST ? outcome : (model.costs.drop[outcome] as number)
    leaves[end] = place < 0 ? fromHere : (places.toPin[place] as number)
  }
  const at = (share: number): number => weightedQuantile(leaves, ends.weight, share)
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) }
}

/** How far from the ball the middle good strike finishes that no tree catches, metres: where it crossed the edge when it went into a penalty area. */
export function middleTotal(
  model: HoleModel,
  table: ShotTable,
  ends: StrokeEnds,
  situation: Situation,
): number {
  const { places } = model
  const totals = new Float64Array(ends.count)
  const weights = new Float64Array(ends.count)
  for (let end = 0; end < ends.count; end++) {
    const place = outcomePlace(places, ends.outcome[end] as number)
    totals[end] = Math.hypot(
      (places.x[place] as number) - situation.x,
      (places.y[place] as number) - situation.y,
    )
    const isCounted = (ends.strike[end] as number) < table.goodCount && ends.isCaught[end] === 0
    weights[end] = isCounted ? (ends.weight[end] as number) : 0
  }
  return weightedQuantile(totals, weights.some((weight) => weight > 0) ? weights : ends.weight, 0.5)
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
