import type { RoundHole } from './round.ts'

/** A hole of a round and the day of the round. */
export interface DatedHole {
  readonly date: string | null
  readonly hole: RoundHole
}
