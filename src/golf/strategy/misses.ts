import type { Candidate } from './evaluate-stroke.ts'
import type { HoleModel } from './hole-model.ts'
import type { PlanOption } from './plan.ts'
import { outcomeCost } from './stroke-cost.ts'

/** The outer quarter of the balls on each side counts as missing to that side, the half between as the middle. */
const OUTER_SHARE = 0.25
/** Under this difference in strokes neither side is safer. Our assumption: a few balls in a hundred of a hazard. */
const LEAST_DIFFERENCE = 0.05
/** A side that costs more than this above the middle is not safe, whatever the other one costs. Our assumption. */
const MOST_SAFE_COST = 0.25

/** What the outer quarter of balls to each side, mishits among them, costs against the half between, strokes. */
export function missesOf(
  model: HoleModel,
  candidate: Candidate,
  values: Float64Array,
  here: number,
): PlanOption['misses'] {
  const { table, ends } = candidate
  const sums = { left: 0, middle: 0, right: 0 }
  const weights = { left: 0, middle: 0, right: 0 }
  for (let end = 0; end < ends.count; end++) {
    const cost = outcomeCost(model.costs, ends.outcome[end] as number, values, here)
    const weight = ends.weight[end] as number
    const share = table.directionShare[ends.strike[end] as number] as number
    const part = share < OUTER_SHARE ? 'left' : share > 1 - OUTER_SHARE ? 'right' : 'middle'
    sums[part] += weight * cost
    weights[part] += weight
  }
  const mean = (part: keyof typeof sums): number => sums[part] / weights[part]
  return { left: mean('left') - mean('middle'), right: mean('right') - mean('middle') }
}

/** The side on which missing costs less, or `null` when both cost about alike or neither is safe. */
export function safeSide({ misses }: Pick<PlanOption, 'misses'>): 'left' | 'right' | null {
  if (Math.abs(misses.left - misses.right) < LEAST_DIFFERENCE) return null
  const side = misses.left < misses.right ? 'left' : 'right'
  return misses[side] <= MOST_SAFE_COST ? side : null
}

/** Whether missing to either side is dear. */
export function isDearToBothSides({ misses }: Pick<PlanOption, 'misses'>): boolean {
  return Math.min(misses.left, misses.right) > MOST_SAFE_COST
}
