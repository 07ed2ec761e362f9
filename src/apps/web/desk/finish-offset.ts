import type { PlanOption } from '#golf/strategy/plan.ts'

/** How far sideways a club aimed along a heading finishes today, metres, right positive: its best line unless another is given. */
export function finishOffset(
  option: Pick<PlanOption, 'aim' | 'total_m'>,
  headingDegrees: number = option.aim.heading_deg,
): number {
  return option.total_m * Math.sin((headingDegrees * Math.PI) / 180)
}
