import type { Station } from './test-day-stations.ts'

/** Where a ball of a short shot or a long putt stopped: metres from the hole, on the green or short of it. */
export interface Leave {
  readonly metres: number
  readonly isOffGreen: boolean
}

/** What was played from one station. */
export interface StationResult {
  readonly station: Station
  readonly holed: number
  /** Balls that were not holed, where they were measured. */
  readonly leaves: readonly Leave[]
  /** Balls played: a test may be cut short. */
  readonly balls: number
}

/** One test day. */
export interface TestDayResults {
  readonly stations: readonly StationResult[]
}
