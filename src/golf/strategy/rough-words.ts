import type { Plan } from './plan.ts'
import { QUICK } from './settings.ts'

/** What a quick answer costs in exactness. */
export const QUICK_WORDS =
  'Each hole was solved by quick settings, about 0.1 of a stroke rough in itself: a club or a side that is nearly as good may be another in full.'

/** Whether a plan was made by quick settings. */
export function isRough({ method }: Pick<Plan, 'method'>): boolean {
  return method.cell_m >= QUICK.cellMetres
}

/** Said beside plans that were made by quick settings, on screens as on paper. */
export function roughWords(plans: readonly Pick<Plan, 'method'>[]): string[] {
  return plans.some(isRough) ? [QUICK_WORDS] : []
}
