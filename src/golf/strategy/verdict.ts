import type { FormatLimits } from './format-settings.ts'
import type { Plan, PlanOption } from './plan.ts'
import { CLEAR_SHARE, CLOSE_STROKES, TOO_CLOSE_SHARE, TOO_CLOSE_STROKES } from './settings.ts'

/**
 * How sure the first option is: too close to call when another club costs next to nothing more, or when the first is
 * the best for too few of the players that this one may be; clear when another costs a good deal more and nearly all of
 * those players say so; close between. `limits`: gaps in the unit of the costs, strokes by default.
 */
export function verdictOf(
  options: readonly Pick<PlanOption, 'cost' | 'best_in_draws'>[],
  draws: number,
  limits: FormatLimits = { tooClose: TOO_CLOSE_STROKES, close: CLOSE_STROKES },
): Plan['verdict'] {
  const [first, second] = options
  if (!first || !second) return 'clear'
  if (second.cost - first.cost < limits.tooClose) return 'too-close'
  const share = draws > 0 ? first.best_in_draws : 1
  if (share < TOO_CLOSE_SHARE) return 'too-close'
  return second.cost - first.cost < limits.close || share < CLEAR_SHARE ? 'close' : 'clear'
}
