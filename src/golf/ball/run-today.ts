import type { FlightChange } from './flights.ts'
import { LEAST_MODEL_RUN_METRES, LEAST_RUN_SCALE, MOST_RUN_SCALE } from './settings.ts'

/**
 * A player's stock run, metres on a level normal fairway, as today's landing leaves it: steeper and slower landings run
 * less. The model's change is scaled to the player's own run, since models agree on changes only.
 */
export function runToday(stockRun: number, change: FlightChange): number {
  const quotient = stockRun / Math.max(change.referenceRun, LEAST_MODEL_RUN_METRES)
  const scale = Math.min(MOST_RUN_SCALE, Math.max(LEAST_RUN_SCALE, quotient))
  return Math.max(0, stockRun + scale * (change.run - change.referenceRun))
}
