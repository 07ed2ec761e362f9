import type { PlanOption } from '#golf/strategy/plan.ts'

/**
 * What a line of this club costs against the plan, strokes: the plan's aim costs joined by straight lines, level
 * beyond the last. `offsetMetres` is where the line finishes today. `null` when the plan has none.
 */
export function aimCost(option: PlanOption, offsetMetres: number): number | null {
  const costs = triedLines(option).toSorted((a, b) => a.offset_m - b.offset_m)
  const [first, last] = [costs[0], costs.at(-1)]
  if (first === undefined || last === undefined) return null
  if (offsetMetres <= first.offset_m) return first.cost
  for (const [index, to] of costs.entries()) {
    const from = costs[index - 1]
    if (from === undefined || offsetMetres > to.offset_m) continue
    const share = (offsetMetres - from.offset_m) / Math.max(1e-9, to.offset_m - from.offset_m)
    return from.cost + (to.cost - from.cost) * share
  }
  return last.cost
}

/** True when a line lies beyond those the plan has tried, so that its cost is only a lower bound. */
export function isBeyondTried(option: PlanOption, offsetMetres: number): boolean {
  const offsets = triedLines(option).map((each) => each.offset_m)
  return offsetMetres < Math.min(...offsets) - 0.5 || offsetMetres > Math.max(...offsets) + 0.5
}

/** The plan's aim costs, their offsets taken from the stock total to where the shot finishes today. */
function triedLines({ aim, aimCosts, total_m: total }: PlanOption): PlanOption['aimCosts'] {
  return aimCosts.map(({ offset_m, cost }) => ({ offset_m: (offset_m * total) / aim.at_m, cost }))
}
