import { SMALLEST_PRINTED_COST } from './settings.ts'

/** A cost in strokes for a table: `–` when none is left after rounding, else `+0.04`. */
export function costText(cost: number): string {
  return Math.abs(cost) < SMALLEST_PRINTED_COST ? '–' : `${cost > 0 ? '+' : '−'}${Math.abs(cost).toFixed(2)}`
}
