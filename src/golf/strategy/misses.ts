import { type Candidate, outcomeOfStrike, type Situation } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import type { PlanOption } from './plan.ts'
import { outcomeCost } from './stroke-cost.ts'

/** The outer quarter of the good strikes on each side counts as missing well to that side. */
const OUTER_SHARE = 0.25
/** Under this difference in strokes neither side is safer. Our assumption: a few balls in a hundred of a hazard. */
const LEAST_DIFFERENCE = 0.05

/** What the outer quarter of good strikes to each side costs against the average ball of the shot, strokes. */
export function missesOf(
  model: HoleModel,
  candidate: Candidate,
  situation: Situation,
  values: Float64Array,
  here: number,
): PlanOption['misses'] {
  const { table } = candidate
  const sums = { left: 0, right: 0, all: 0 }
  const counts = { left: 0, right: 0 }
  for (let k = 0; k < table.weight.length; k++) {
    const outcome = outcomeOfStrike(model.places, table, situation, k)
    const cost = outcomeCost(model.costs, outcome, values, here)
    sums.all += (table.weight[k] as number) * cost
    const share = table.directionShare[k] as number
    const side = share < OUTER_SHARE ? 'left' : share > 1 - OUTER_SHARE ? 'right' : null
    if (k >= table.goodCount || side === null) continue
    sums[side] += cost
    counts[side] += 1
  }
  return {
    left: sums.left / Math.max(1, counts.left) - sums.all,
    right: sums.right / Math.max(1, counts.right) - sums.all,
  }
}

/** The side on which missing costs less, or `null` when both cost about alike. */
export function safeSide({ misses }: Pick<PlanOption, 'misses'>): 'left' | 'right' | null {
  if (Math.abs(misses.left - misses.right) < LEAST_DIFFERENCE) return null
  return misses.left < misses.right ? 'left' : 'right'
}
