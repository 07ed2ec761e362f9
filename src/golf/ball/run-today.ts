import type { FlightChange } from './flights.ts'
import { runOfLanding } from './run-of-landing.ts'
import { LEAST_MODEL_RUN_METRES, LEAST_RUN_SCALE, MOST_RUN_SCALE } from './settings.ts'
import { GREEN_GRADE } from './surface-settings.ts'
import { type GroundToday, turfOf } from './turf.ts'

/**
 * A player's stock run, metres on a level normal fairway, as today's landing leaves it: steeper and slower landings run
 * less. The model's change is scaled to the player's own run, since models agree on changes only. `spinShare`: backspin
 * as a share of the stock shot's, where the lie takes some of it.
 */
export function runToday(stockRun: number, change: FlightChange, spinShare: number = 1): number {
  const fromSpin =
    spinShare === 1
      ? 0
      : runOfLanding(landingOf(change, spinShare), 0) - runOfLanding(landingOf(change, 1), 0)
  return Math.max(0, scaled(stockRun, change, change.run + fromSpin))
}

/** Runs on a green by its slope along the ball's way, metres; negative is back towards the player. */
export interface GreenRuns {
  /** Where the green falls away by {@link GREEN_GRADE}, where it is level, and where it rises as much. */
  readonly falling: number
  readonly level: number
  readonly rising: number
}

/**
 * The same landing on today's green: the model's difference between landing there and the stock landing on a level
 * normal fairway, scaled to the player's own run. A spinning wedge comes back, but no ball does that would not by the
 * model itself. `isSloped` false saves the two slopes for a green that has none.
 */
export function greenRunsToday(
  stockRun: number,
  change: FlightChange,
  today: GroundToday,
  spinShare: number,
  isSloped: boolean,
): GreenRuns {
  const turf = turfOf('green', today)
  const landing = landingOf(change, spinShare)
  const at = (grade: number): number => {
    if (turf === null) return 0
    const modelRun = runOfLanding(landing, grade, turf)
    return Math.max(Math.min(0, modelRun), scaled(stockRun, change, modelRun))
  }
  const level = at(0)
  return isSloped
    ? { falling: at(-GREEN_GRADE), level, rising: at(GREEN_GRADE) }
    : { falling: level, level, rising: level }
}

function landingOf(
  change: FlightChange,
  spinShare: number,
): { readonly speed: number; readonly angle: number; readonly spinRpm: number } {
  return {
    speed: change.landingSpeed,
    angle: change.landingAngle,
    spinRpm: spinShare * change.landingSpinRpm,
  }
}

function scaled(stockRun: number, change: FlightChange, modelRun: number): number {
  const quotient = stockRun / Math.max(change.referenceRun, LEAST_MODEL_RUN_METRES)
  const scale = Math.min(MOST_RUN_SCALE, Math.max(LEAST_RUN_SCALE, quotient))
  return stockRun + scale * (modelRun - change.referenceRun)
}
