import type { Plan } from '#golf/strategy/plan.ts'
import { QUICK } from '#golf/strategy/settings.ts'

/** What kind of an answer stands in for the full one. */
export function firstAnswerWords(plan: Plan | null): string {
  const isRough = plan === null || plan.method.cell_m >= QUICK.cellMetres
  return isRough ? 'A first answer, on a coarse grid.' : 'A first answer, from the last full plan.'
}
