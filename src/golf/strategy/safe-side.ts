import type { PlanOption } from './plan.ts'

/** A miss this far off the best line is compared to both sides, metres. */
const MISS_METRES = 15
/** Under this difference in strokes neither side is safer. */
const LEAST_DIFFERENCE = 0.03

/** The side on which missing the line costs less, or `null` when both cost alike or the lines tried do not say. */
export function safeSide(option: PlanOption): 'left' | 'right' | null {
  const left = costAt(option, option.aim.offset_m - MISS_METRES)
  const right = costAt(option, option.aim.offset_m + MISS_METRES)
  if (left === null || right === null || Math.abs(left - right) < LEAST_DIFFERENCE) return null
  return left < right ? 'left' : 'right'
}

/** The cost of the tried line nearest to an offset, if one lies within a few metres of it. */
function costAt(option: PlanOption, offset: number): number | null {
  let nearest: PlanOption['aimCosts'][number] | null = null
  for (const one of option.aimCosts)
    if (!nearest || Math.abs(one.offset_m - offset) < Math.abs(nearest.offset_m - offset)) nearest = one
  return nearest && Math.abs(nearest.offset_m - offset) < MISS_METRES / 2 ? nearest.cost : null
}
